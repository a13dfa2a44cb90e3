// The roll at the tape's end, seen from its side: tape wound on a cardboard core.

/** @param {CanvasRenderingContext2D} ink @param {{size: number, colour: string, ground: string}} roll size: diameter in CSS pixels */
export function drawRoll(ink, { size, colour, ground }) {
  const middle = size / 2, whole = size * 0.47;
  disc(ink, middle, whole, 'rgba(0,0,0,.85)');
  disc(ink, middle, whole * 0.95, colour);
  ink.lineWidth = Math.max(0.5, size * 0.011);
  for (const [part, shade] of [[0.88, 0.22], [0.8, 0.13], [0.73, 0.24], [0.66, 0.14], [0.59, 0.2]]) {
    ink.strokeStyle = `rgba(0,0,0,${shade})`;
    ring(ink, middle, whole * part);
  }
  const light = ink.createLinearGradient(0, middle - whole, 0, middle + whole);
  light.addColorStop(0, 'rgba(255,255,255,.22)');
  light.addColorStop(0.5, 'rgba(255,255,255,0)');
  light.addColorStop(1, 'rgba(0,0,0,.2)');
  disc(ink, middle, whole * 0.95, light);
  disc(ink, middle, whole * 0.5, 'rgba(0,0,0,.75)');
  disc(ink, middle, whole * 0.46, '#b99763');
  disc(ink, middle, whole * 0.36, '#7d6339');
  disc(ink, middle, whole * 0.33, ground);
  ink.strokeStyle = 'rgba(0,0,0,.5)';                       // the loose end, by which one sees the roll turn
  ink.lineWidth = size * 0.02;
  ink.beginPath();
  ink.moveTo(middle, middle - whole * 0.95);
  ink.lineTo(middle + whole * 0.12, middle - whole * 0.6);
  ink.stroke();
}

function disc(ink, middle, radius, fill) {
  ink.fillStyle = fill;
  ink.beginPath();
  ink.arc(middle, middle, radius, 0, 7);
  ink.fill();
}

function ring(ink, middle, radius) {
  ink.beginPath();
  ink.arc(middle, middle, radius, 0, 7);
  ink.stroke();
}
