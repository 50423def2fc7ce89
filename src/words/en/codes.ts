// Words of QR codes.

export const codes = {
  'qr.drawn': 'The QR code is being drawn.',
  'qr.tooMuch': 'This is too much for a QR code. Pass it on as a file.',
  'qr.notDrawn': 'The QR code cannot be drawn here. Pass it on as a file.',
} as const;
