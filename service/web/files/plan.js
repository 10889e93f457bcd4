// Plans that are drawn as they lie: pieces between their edges, wedges with their
// turning points, whatever has an edge all round, and lines against one another.

import { canvas, margin, pathOf, said, scale, wide } from './canvas.js';
import { drawn } from './element.js';

// More corners than this would be a thick line.
const mostCorners = 60;
// Rows below a wedge, so that its lowest part is seen to be fabric.
const below = 2;

const sideOf = (line) => /\b(left|right)\b/.exec(line.name)?.[1];
const pieceOf = (line) => line.name.replace(/^.*\bof the /, '').replace(/\b(left|right)\b ?/, '');

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

// widthOf is how wide a piece is at its beginning or its end.
export const widthOf = (piece, i) => piece.right.points.at(i).x - piece.left.points.at(i).x;

// closed tells a line that comes back to where it began.
function closed({ points }) {
  const [first, last] = [points[0], points.at(-1)];
  return points.length > 3 && Math.hypot(first.x - last.x, first.y - last.y) < 1e-6;
}

// turns are the points of a wedge's edge where it climbs.
export function turns(line) {
  return line.points.filter((point, i) => i > 0 && point.x === line.points[i - 1].x);
}

function stroke(line, at, manner = 'line') {
  return drawn('path', { d: pathOf(line.points.map(at)), class: manner }, drawn('title', {}, line.name));
}

function fabric(points, rule) {
  return drawn('path', { d: `${points}Z`, class: 'fabric', 'fill-rule': rule });
}

function dots(points, kind, r = 2.4) {
  return points.map(([cx, cy]) => drawn('circle', { cx: cx.toFixed(1), cy: cy.toFixed(1), r, class: kind }));
}

function pieceDrawn(piece, at, alone) {
  const edges = [piece.right, piece.left];
  const around = edges[0].points.map(at).concat(edges[1].points.map(at).reverse());
  const few = edges.filter((line) => alone && line.points.length > 2 && line.points.length <= mostCorners);
  return [fabric(pathOf(around)), ...edges.map((line) => stroke(line, at)), ...dots(few.flatMap((line) => line.points.map(at)), 'corner')];
}

// side draws pieces beside one another, each under its name, or one alone with its
// measures.
export function side(all, outline, sized) {
  const gap = 16;
  const width = (wide - margin.left - margin.right - gap * (all.length - 1)) / all.length;
  const foot = margin.bottom + 22;
  const parts = all.map((piece, i) => ({ piece, ...scale(outline, { left: margin.left + i * (width + gap), width, below: foot }) }));
  const names = all.length > 1 ? parts.map(({ piece, at }) => {
    const [middle] = at({ x: (outline.x.least + outline.x.greatest) / 2, y: outline.y.least });
    return said(piece.name, middle, parts[0].height - 12, 'middle');
  }) : measures(all[0], parts[0], sized);
  return canvas(parts[0].height + (all.length > 1 ? 0 : 8),
    ...parts.flatMap(({ piece, at }) => pieceDrawn(piece, at, all.length === 1)), ...names);
}

function measures(piece, { at, height }, sized) {
  const [x] = at({ x: (piece.left.points[0].x + piece.right.points[0].x) / 2, y: piece.left.points[0].y });
  const [, top] = at(piece.left.points.at(-1));
  return [said(sized(widthOf(piece, 0)), x, height - 10, 'middle'), said(sized(widthOf(piece, -1)), x, top + 22, 'middle')];
}

// wedge draws the upper edge of fabric, and marks where its rows turn.
export function wedge(lines, outline) {
  const edge = lines.find((line) => line.name === 'top edge');
  const { height, at } = scale({ x: outline.x, y: { ...outline.y, least: outline.y.least - below } });
  const ground = [edge.points.at(-1), edge.points[0]].map((p) => at({ x: p.x, y: outline.y.least - below }));
  return canvas(height, fabric(pathOf(edge.points.map(at).concat(ground))),
    ...lines.map((line) => stroke(line, at, line === edge ? 'line' : 'ring')),
    ...dots(turns(edge).length <= mostCorners ? turns(edge).map(at) : [], 'mark', 5));
}

// ranged draws what is likely as a line, and between the least and the most a band.
export function ranged(lines, outline) {
  const { height, at } = scale({ x: outline.x, y: { ...outline.y, least: Math.min(0, outline.y.least) } });
  const [low, likely, high] = ['low', 'likely', 'high'].map((name) => lines.find((line) => line.name === name));
  const nothing = pathOf([outline.x.least, outline.x.greatest].map((x) => at({ x, y: 0 })));
  return canvas(height, fabric(pathOf(high.points.map(at).concat(low.points.map(at).reverse()))), stroke(likely, at),
    stroke(low, at, 'ring'), stroke(high, at, 'ring'), drawn('path', { d: nothing, class: 'line ground' }));
}

// plan draws lines as they lie; what a closed one encloses is fabric, but for what
// another closed one takes out of it.
export function plan(lines, outline) {
  const { height, at } = scale(outline);
  const pairs = pieces(lines.filter(sideOf)).map(({ left, right }) => pathOf(right.points.map(at).concat(left.points.map(at).reverse())));
  const around = pairs.concat(lines.filter(closed).map((line) => pathOf(line.points.map(at)))).join('Z');
  const few = lines.filter((line) => line.points.length > 2 && line.points.length <= mostCorners && !closed(line));
  return canvas(height, around ? fabric(around, 'evenodd') : null,
    ...lines.map((line) => stroke(line, at, line.name === 'wanted' ? 'ring' : 'line')),
    ...dots(few.flatMap((line) => line.points.map(at)), 'corner'));
}
