// Pieces between a left and a right edge: beside one another under their names, one alone,
// or sizes of one in another, with their measures.

import { canvas, margin, pathOf, said, scale, wide } from './canvas.js';
import { drawn } from './element.js';
import { corners, dots, fabric, spanOf, stroke } from './lines.js';
import { across, beside, room, within } from './measured.js';

export const sideOf = (line) => /\b(left|right)\b/.exec(line.name)?.[1];
const pieceOf = (line) => line.name.replace(/^.*\bof the /, '').replace(/,? ?\b(left|right|edge)\b/g, '').trim();

// pieces are pairs of a left and a right edge, or nothing where some line is in none.
export function pieces(lines) {
  const found = new Map();
  for (const line of lines) {
    const side = sideOf(line);
    if (!side) return [];
    const piece = found.get(pieceOf(line)) ?? { name: pieceOf(line) };
    if (piece[side]) return [];
    piece[side] = line;
    found.set(piece.name, piece);
  }
  const all = [...found.values()];
  return all.every((piece) => piece.left && piece.right) ? all : [];
}

const pointsOf = (piece) => piece.left.points.concat(piece.right.points);

// endOf is from where to where a piece lies where it begins, or ends, i being 0 or -1.
function endOf(piece, i) {
  const there = (line) => line.points.filter((p) => p.y === line.points.at(i).y);
  return spanOf(there(piece.left).concat(there(piece.right)), 'x');
}

// widthOf is how wide a piece is where it begins, or ends.
export function widthOf(piece, i) {
  const [from, to] = endOf(piece, i);
  return to - from;
}

export function heightOf(piece) {
  const [foot, top] = spanOf(pointsOf(piece), 'y');
  return top - foot;
}

// waistOf is where a piece that has as many corners on either side is narrower, or wider,
// than at both of its ends.
export function waistOf({ left, right }) {
  const widths = right.points.map((p, i) => (left.points[i]?.y === p.y ? p.x - left.points[i].x : NaN));
  const ends = [widths[0], widths.at(-1)];
  for (const [most, beyond] of [[Math.min(...widths), Math.min(...ends)], [Math.max(...widths), Math.max(...ends)]]) {
    if (Number.isNaN(most) || most === beyond) continue;
    const there = right.points.filter((_, i) => widths[i] === most).map((p) => p.y);
    return { width: most, y: (there[0] + there.at(-1)) / 2, right: right.points[widths.indexOf(most)].x };
  }
  return null;
}

// apart tells pieces that lie beside one another already.
function apart(all) {
  const spans = all.map((piece) => spanOf(pointsOf(piece), 'x')).sort((a, b) => a[0] - b[0]);
  return spans.every(([from], i) => i === 0 || from > spans[i - 1][1]);
}

function pieceDrawn(piece, at, alone) {
  const edges = [piece.right, piece.left];
  const around = edges[0].points.map(at).concat(edges[1].points.map(at).reverse());
  return [fabric(pathOf(around)), ...edges.map((line) => stroke(line, at)), ...alone ? corners(edges, at) : []];
}

// raised is a piece that has no height, such as the top of a straight sleeve, with some of the
// fabric below it; of a piece that has one, the piece.
function raised(piece, { y: { least, greatest } }) {
  if (heightOf(piece) > 0) return piece;
  const [from, to] = spanOf(pointsOf(piece), 'x');
  const y = (least + greatest) / 2;
  const edge = (line, x) => ({ ...line, points: [{ x, y: least }, { x, y }, { x: (from + to) / 2, y }] });
  return { ...piece, left: edge(piece.left, from), right: edge(piece.right, to) };
}

// side draws pieces beside one another, each above its name, or one alone with what was
// wanted of it. Those that lie beside one another already stay so. say: {across, up} gives
// the words of a measure.
export function side(all, wishes, outline, say) {
  const alone = all.length === 1;
  const gap = 16;
  const below = room.line + (all.some((piece) => piece.name) ? room.word : 0);
  const width = (wide - margin.left - margin.right - gap * (all.length - 1)) / all.length;
  const part = (i) => (alone ? { width: width - room.side } : apart(all) ? {} : { left: margin.left + i * (width + gap), width });
  const parts = all.map((piece, i) => ({ piece, ...scale(outline, { above: room.line, below, ...part(i) }) }));
  return canvas(parts[0].height,
    ...parts.flatMap(({ piece, at }) => pieceDrawn(raised(piece, outline), at, alone)),
    ...wishes.map((line) => stroke(line, parts[0].at, 'ring')),
    ...parts.flatMap(({ piece, at }) => measures(piece, at, say, alone)));
}

// measures are how wide a piece is below, above and where it is narrowest, how high it is,
// and what it is called.
function measures(piece, at, say, alone) {
  const [[foot, top], [left, right]] = [spanOf(pointsOf(piece), 'y'), spanOf(pointsOf(piece), 'x')];
  const wideness = ([from, to], y, away, end) => {
    const [x, line] = at({ x: from, y });
    return across(x, at({ x: to, y })[0], line + away, say.across(to - from, piece.name, end), away <= 0);
  };
  const [middle, ground] = at({ x: (left + right) / 2, y: foot });
  const marks = wideness(endOf(piece, 0), foot, 12, 'below');
  if (piece.name) marks.push(said(piece.name, middle, ground + room.line + 20, 'middle'));
  if (top === foot) return marks;
  marks.push(...wideness(endOf(piece, -1), top, -10, 'above'));
  const waist = waistOf(piece);
  if (waist) marks.push(...wideness([waist.right - waist.width, waist.right], waist.y, 0, 'waist'));
  const [edge, height] = at({ x: right, y: top });
  const words = say.up(top - foot, piece.name);
  // Half-way up it is about as wide as on the mean of both ends.
  const half = (widthOf(piece, 0) + widthOf(piece, -1)) / 2;
  const breadth = at({ x: half, y: foot })[0] - at({ x: 0, y: foot })[0];
  return marks.concat(alone ? beside(edge + 14, ground, height, words) : within(middle, ground, height, words, breadth));
}

// nested draws pieces about one centre line, as sizes lie in one another, with the name of
// each at its right edge, one above the other.
export function nested(all, outline) {
  const names = 110;
  const { height, at } = scale(outline, { width: wide - margin.left - names });
  const reach = (piece) => spanOf(pointsOf(piece), 'x')[1];
  const outer = all.reduce((a, b) => (reach(a) > reach(b) ? a : b));
  const edge = at({ x: outline.x.greatest, y: 0 })[0];
  const low = (height - margin.top - margin.bottom) / (all.length + 1) < room.word;
  const called = low ? [] : all.flatMap((piece, i) => {
    const y = height - margin.bottom - ((i + 1) / (all.length + 1)) * (height - margin.top - margin.bottom);
    const x = crossing(piece.right.points.map(at), y);
    return [drawn('line', { x1: x.toFixed(1), x2: edge + 6, y1: y.toFixed(1), y2: y.toFixed(1), class: 'stem' }), ...dots([[x, y]], 'mark', 3.5),
      said(piece.name.replace(/^size /, ''), edge + 10, y + 6)];
  });
  return canvas(height, fabric(pathOf(outer.right.points.map(at).concat(outer.left.points.map(at).reverse()))),
    ...all.flatMap((piece) => [stroke(piece.right, at), stroke(piece.left, at)]), ...called);
}

// crossing is where a line that rises comes by a height, y running downward; beyond its
// end, its end.
function crossing(points, y) {
  const i = points.findIndex((p) => p[1] <= y);
  if (i <= 0) return points.at(i)[0];
  const [a, b] = [points[i - 1], points[i]];
  return a[0] + (b[0] - a[0]) * ((a[1] - y) / (a[1] - b[1] || 1));
}
