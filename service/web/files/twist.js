// A piece of yarn, with the slope of what is twisted in it.

import { canvas, margin, pathOf, scale, wide } from './canvas.js';
import { fabric, stroke } from './lines.js';
import { across, beside, room } from './measured.js';

// slopesOf are the slopes that are seen; two of them come to a turn.
const slopesOf = (lines) => lines.filter((line) => line.name === 'slope of the twist');

// turnOf is the length of a turn and the letter whose middle stroke slopes as the twist does.
export function turnOf(lines) {
  const [first, second] = slopesOf(lines).map((line) => line.points);
  const [from, to] = [...first].sort((a, b) => a.x - b.x);
  return { length: 2 * (second[0].y - first[0].y), letter: to.y > from.y ? 'Z' : 'S' };
}

export function twist(lines, outline, say) {
  const { height, at } = scale(outline, { below: room.line, width: wide - margin.left - margin.right - room.side });
  const { x, y } = outline;
  const corner = (px, py) => at({ x: px, y: py });
  const { length } = turnOf(lines);
  const [edge, foot] = corner(x.greatest, y.least);
  return canvas(height, fabric(pathOf([corner(x.least, y.least), corner(x.greatest, y.least), corner(x.greatest, y.greatest), corner(x.least, y.greatest)])),
    ...lines.map((line) => stroke(line, at)),
    ...beside(edge + 14, foot, corner(0, y.least + length)[1], ['one turn', say.fine(length)]),
    ...across(corner(x.least, 0)[0], edge, foot + 12, say.fine(x.greatest - x.least)));
}
