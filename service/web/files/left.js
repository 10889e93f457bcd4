// What is left of yarns, row by row: of one what is likely between the least and the most,
// of several each by itself.

import { canvas, margin, pathOf, said, scale, wide } from './canvas.js';
import { drawn } from './element.js';
import { fabric, stroke } from './lines.js';
import { across, room } from './measured.js';

const rangeOf = (lines) => ['low', 'likely', 'high'].map((name) => lines.find((line) => line.name === name)).filter(Boolean);
const isRange = (lines) => lines.length === 3 && rangeOf(lines).length === 3;

// endOf is what is left of a yarn at the last row that it lasts for.
const endOf = (line) => line.points.at(-1);

export function left(lines, { x, y }, say) {
  const one = isRange(lines);
  const { height, at } = scale({ x, y: { ...y, least: Math.min(0, y.least) } },
    { above: 36, below: room.line, width: wide - margin.left - margin.right - room.side });
  const [from, to] = [x.least, x.greatest].map((v) => at({ x: v, y: 0 }));
  const [low, likely, high] = rangeOf(lines);
  const band = one ? [fabric(pathOf(high.points.map(at).concat(low.points.map(at).reverse())))] : [];
  // From below, each name above the one before.
  let free = Infinity;
  const ends = (one ? [likely] : lines).map((line) => [line, ...at(endOf(line))]).sort((a, b) => b[2] - a[2]).map(([line, px, py]) => {
    free = Math.min(py + (one ? 6 : -4), free - room.word);
    return said(one ? say.y(endOf(line).y) : line.name, px + 8, free);
  });
  return canvas(height, ...band, ...lines.map((line) => stroke(line, at, one && line !== likely ? 'ring' : 'line')),
    drawn('path', { d: pathOf([from, to]), class: 'line ground' }), said(say.y(100), from[0] + 8, at({ x: 0, y: 100 })[1] - 6), ...ends,
    ...across(from[0], to[0], from[1] + 12, say.x(x.greatest - x.least)));
}

export function leftInWords(lines, { x }, say) {
  const rows = say.x(x.greatest - x.least);
  if (isRange(lines) && lines.every((line) => endOf(line).x === x.greatest)) {
    const [low, likely, high] = rangeOf(lines).map((line) => say.y(endOf(line).y));
    return `How much of the yarn is left, row by row over ${rows}: at the end ${likely} of it likely, ${low} at the least, ${high} at the most.`;
  }
  const each = lines.map((line) => `${line.name}, ${endOf(line).x === x.greatest ? `${say.y(endOf(line).y)} at the end` : `used up after ${say.x(endOf(line).x)}`}`);
  return `How much of the yarn is left, row by row over ${rows}: ${each.join('; ')}.`;
}
