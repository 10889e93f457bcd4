// Ranges under one another, such as how much yarn is needed and how much whole balls
// bring.

import { canvas, margin, said, wide } from './canvas.js';
import { drawn } from './element.js';

const step = 46;

// compared draws a bar to what is likely, a stroke from the least to the most, and
// what stands across all of them as a line.
export function compared(lines, outline, sized) {
  const ranges = lines.filter((line) => line.points.length === 3);
  const x = (v) => margin.left + (v / (outline.x.greatest * 1.05 || 1)) * (wide - margin.left - margin.right);
  const rows = ranges.flatMap(({ name, points: [low, likely, high] }, i) => {
    const y = margin.top + i * step + 24;
    const [from, to] = [x(low.x).toFixed(1), x(high.x).toFixed(1)];
    return [said(`${name}: ${sized(likely.x)}`, margin.left, y - 8),
      drawn('rect', { x: x(0), y, width: (x(likely.x) - x(0)).toFixed(1), height: 12, class: 'fabric' }),
      drawn('path', { d: `M${from} ${y + 6}H${to}M${from} ${y}V${y + 12}M${to} ${y}V${y + 12}`, class: 'line' }),
      drawn('circle', { cx: x(likely.x).toFixed(1), cy: y + 6, r: 4, class: 'mark' })];
  });
  const bought = lines.filter((line) => line.points.length === 2);
  const foot = margin.top + ranges.length * step;
  const height = foot + (bought.length ? 30 : margin.bottom);
  const across = bought.flatMap((line) => {
    const at = x(line.points[0].x);
    return [drawn('line', { x1: at.toFixed(1), x2: at.toFixed(1), y1: margin.top, y2: foot, class: 'stem' }),
      said(`${line.name}: ${sized(line.points[0].x)}`, Math.min(at + 40, wide - margin.right), foot + 22, 'end')];
  });
  return canvas(height, ...rows, ...across);
}

// inWords says what compared draws; figure writes one value.
export function inWords(lines, figure) {
  const all = lines.map(({ name, points: [low, likely, high] }) => (high
    ? `${name}: ${figure(low)} at the least, ${figure(likely)} likely, ${figure(high)} at the most`
    : `${name}: ${figure(low)}`)).join('; ');
  return all.charAt(0).toUpperCase() + all.slice(1);
}
