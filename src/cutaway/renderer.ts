// Picks the way of drawing: WebGL where it works and is fast, a plain 2D canvas else.

// The page's policy forbids code made from text: this has the drawing library do without it.
import 'pixi.js/unsafe-eval';
// What the drawing is made of; events, accessibility and filters of the library stay out (see init below).
import 'pixi.js/graphics';
import 'pixi.js/sprite-tiling';
import 'pixi.js/text';
import { CanvasRenderer, DOMAdapter, WebGLRenderer, type Container } from 'pixi.js';

export type RendererKind = 'webgl' | 'canvas';

export interface Drawer {
  readonly kind: RendererKind;
  resize(width_px: number, height_px: number): void;
  render(root: Container): void;
  /** WebGL has been taken away by the system. */
  isLost(): boolean;
  destroy(): void;
}

/** How long a lost picture may take to come back by itself, ms. */
const BACK_WITHIN_ms = 1500;

/** Tells when a picture that the system took away is back, or is not coming back. Returns what stops it. */
export function watchLoss(canvas: EventTarget, drawer: Drawer, back: () => void, gone: () => void): () => void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const lost = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(() => drawer.isLost() && gone(), BACK_WITHIN_ms);
  };
  const restored = (): void => {
    clearTimeout(waiting);
    back();
  };
  canvas.addEventListener('webglcontextlost', lost);
  canvas.addEventListener('webglcontextrestored', restored);
  return () => {
    clearTimeout(waiting);
    canvas.removeEventListener('webglcontextlost', lost);
    canvas.removeEventListener('webglcontextrestored', restored);
  };
}

/** How graphics drivers that have no graphics chip call themselves. */
const SOFTWARE = /swiftshader|llvmpipe|softpipe|software|basic render/i;

/** WebGL that the computer only imitates in software is slower than a plain canvas: then it counts as missing. */
function hasFastWebGL(): boolean {
  const asked = { failIfMajorPerformanceCaveat: true };
  const probe = DOMAdapter.get().createCanvas(1, 1).getContext('webgl2', asked) as WebGL2RenderingContext | null;
  if (!probe) return false;
  const named = probe.getExtension('WEBGL_debug_renderer_info');
  const maker = String(probe.getParameter(named ? named.UNMASKED_RENDERER_WEBGL : probe.RENDERER));
  probe.getExtension('WEBGL_lose_context')?.loseContext();
  return !SOFTWARE.test(maker);
}

export async function createDrawer(
  canvas: HTMLCanvasElement | OffscreenCanvas,
  wanted: 'auto' | RendererKind,
  resolution: number,
): Promise<Drawer> {
  const options = {
    canvas,
    width: 16,
    height: 16,
    resolution,
    autoDensity: true,
    antialias: true,
    backgroundAlpha: 0,
    skipExtensionImports: true,
  };
  if (wanted === 'webgl' || (wanted === 'auto' && hasFastWebGL())) {
    try {
      const renderer = new WebGLRenderer();
      await renderer.init(options);
      return {
        kind: 'webgl',
        resize: (width_px, height_px) => renderer.resize(width_px, height_px),
        render: (root) => renderer.render(root),
        isLost: () => renderer.context.isLost,
        destroy: () => renderer.destroy(),
      };
    } catch (cause) {
      if (wanted === 'webgl') throw cause;
    }
  }
  const renderer = new CanvasRenderer();
  await renderer.init(options);
  return {
    kind: 'canvas',
    resize: (width_px, height_px) => renderer.resize(width_px, height_px),
    render: (root) => renderer.render(root),
    isLost: () => false,
    destroy: () => renderer.destroy(),
  };
}
