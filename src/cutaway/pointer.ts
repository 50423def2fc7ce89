// Mouse, pen and fingers over the drawing: wheel and pinch zoom, drag pans, hover and tap ask what is there.

export interface PointerDeeds {
  zoom(factor: number, x_px: number, y_px: number): void;
  pan(dx_px: number, dy_px: number): void;
  /** The pointer rests at a place, or has left. */
  point(place: { x_px: number; y_px: number } | null): void;
  zoomed(): boolean;
}

/** A finger that moved less than this has tapped. */
const TAP_px = 8;
const WHEEL_STEP = 0.0016;

export function listenTo(element: HTMLElement, deeds: PointerDeeds): () => void {
  const fingers = new Map<number, { x: number; y: number }>();
  let moved_px = 0;
  let spread_px = 0;

  const placeOf = (event: { clientX: number; clientY: number }): { x: number; y: number } => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };

  function wheel(event: WheelEvent): void {
    // At the widest view a turn outwards is left to the page.
    if (event.deltaY > 0 && !deeds.zoomed()) return;
    event.preventDefault();
    const { x, y } = placeOf(event);
    const lines = event.deltaMode === 1 ? 16 : 1;
    deeds.zoom(Math.exp(-event.deltaY * lines * WHEEL_STEP), x, y);
  }

  function down(event: PointerEvent): void {
    fingers.set(event.pointerId, placeOf(event));
    moved_px = fingers.size > 1 ? TAP_px * 2 : 0;
    spread_px = 0;
    if (event.pointerType !== 'mouse' || deeds.zoomed()) element.setPointerCapture(event.pointerId);
  }

  function move(event: PointerEvent): void {
    const now = placeOf(event);
    const before = fingers.get(event.pointerId);
    if (!before) {
      deeds.point({ x_px: now.x, y_px: now.y });
      return;
    }
    fingers.set(event.pointerId, now);
    moved_px += Math.hypot(now.x - before.x, now.y - before.y);
    if (fingers.size === 1) {
      if (moved_px > TAP_px) deeds.pan(now.x - before.x, now.y - before.y);
      return;
    }
    const [a, b] = [...fingers.values()];
    if (!a || !b) return;
    const spread = Math.hypot(a.x - b.x, a.y - b.y);
    if (spread_px > 0 && spread > 0) deeds.zoom(spread / spread_px, (a.x + b.x) / 2, (a.y + b.y) / 2);
    deeds.pan((now.x - before.x) / 2, (now.y - before.y) / 2);
    spread_px = spread;
  }

  function up(event: PointerEvent): void {
    const place = fingers.get(event.pointerId);
    fingers.delete(event.pointerId);
    spread_px = 0;
    if (place && moved_px <= TAP_px && event.type === 'pointerup') deeds.point({ x_px: place.x, y_px: place.y });
  }

  function leave(event: PointerEvent): void {
    if (event.pointerType === 'mouse') deeds.point(null);
  }

  element.addEventListener('wheel', wheel, { passive: false });
  element.addEventListener('pointerdown', down);
  element.addEventListener('pointermove', move);
  element.addEventListener('pointerup', up);
  element.addEventListener('pointercancel', up);
  element.addEventListener('pointerleave', leave);
  return () => {
    element.removeEventListener('wheel', wheel);
    element.removeEventListener('pointerdown', down);
    element.removeEventListener('pointermove', move);
    element.removeEventListener('pointerup', up);
    element.removeEventListener('pointercancel', up);
    element.removeEventListener('pointerleave', leave);
  };
}
