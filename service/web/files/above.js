// A yoke from above: circumferences as circles around one middle.

import { canvas, said, wide } from './canvas.js';
import { drawn } from './element.js';

const size = 340;
// Circles nearer than this leave no room for a figure between them.
const between = 30;

// roundsOf are the circumferences of a line, each with the depth at which it is reached.
export function roundsOf(lines) {
  const found = new Map();
  for (const { x, y } of lines.flatMap((line) => line.points)) if (!found.has(x)) found.set(x, y);
  return [...found].map(([x, y]) => ({ x, y })).sort((a, b) => b.x - a.x);
}

export function fromAbove(rounds, sized) {
  const radius = (x) => (x / rounds[0].x) * (size / 2 - 6);
  const circles = rounds.map(({ x }, i) => drawn('circle', { cx: wide / 2, cy: size / 2, r: radius(x).toFixed(1),
    class: i === 0 ? 'fabric line' : i === rounds.length - 1 ? 'opening line' : 'ring' }));
  const inner = radius(rounds.at(-1).x);
  let last = Infinity;
  const figures = rounds.slice(0, -1).map(({ x }, i) => {
    const r = radius(x);
    if (i > 0 && (last - r < between || r - inner < between)) return null;
    last = r;
    return said(sized(x), wide / 2, size / 2 - r + 24, 'middle');
  });
  return canvas(size, ...circles, ...figures, inner > 44 ? said(sized(rounds.at(-1).x), wide / 2, size / 2 + 7, 'middle') : null);
}
