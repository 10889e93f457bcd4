// Plans that are drawn as they lie: pieces between their edges, wedges with their
// turning points, whatever has an edge all round, and lines against one another.

import { canvas, margin, pathOf, said, scale, wide } from './canvas.js';
import { drawn } from './element.js';

// More corners than this would be a thick line.
const mostCorners = 60;
// Rows below a wedge, so that its lowest part is seen to be fabric.
const below = 2;

const sideOf = (line) => /\b(left|right)\b/.exec(line.name)?.[1];
const pieceOf = (line) => line.name.replace(/^.*\bof the /, '').replace(/,? ?\b(left|right|edge)\b/g, '').trim();

// isWish tells a line that the fabric only comes near to: what was wanted.
export const isWish = (line) => /\bwanted\b|^shape\b|\bcurve$/.test(line.name);
// Lines that are marks alone, and what lies behind the rest.
export const isMarks = (line) => /^(increases|decreases)$/.test(line.name);
const isHidden = (line) => /\bbehind$/.test(line.name);

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

// widthOf is how wide a piece is where it begins, and where it ends, i being 0 or -1.
export function widthOf(piece, i) {
  const across = (line) => line.points.filter((p) => p.y === line.points.at(i).y).map((p) => p.x);
  return Math.max(...across(piece.right)) - Math.min(...across(piece.left));
}

// spanOf is from where to where points lie across.
function spanOf(piece) {
  const across = piece.left.points.concat(piece.right.points).map((p) => p.x);
  return [Math.min(...across), Math.max(...across)];
}

// apart tells pieces that lie beside one another already.
function apart(all) {
  const spans = all.map(spanOf).sort((a, b) => a[0] - b[0]);
  return spans.every(([from], i) => i === 0 || from > spans[i - 1][1]);
}

// closed tells a line with fabric inside: it comes back to where it began, or from its
// foot over the top to the other end of its foot.
function closed({ points }) {
  const [first, last] = [points[0], points.at(-1)];
  const least = Math.min(...points.map((p) => p.y));
  return points.length > 3 && (Math.hypot(first.x - last.x, first.y - last.y) < 1e-6 || first.y === least && last.y === least);
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

// raised is a piece that has no height, such as the top of a straight sleeve, with some of the
// fabric below it; of a piece that has one, the piece.
function raised(piece, { y: { least, greatest } }) {
  const { left, right } = piece;
  if (left.points.concat(right.points).some((p) => p.y !== least)) return piece;
  const [from, to] = spanOf(piece);
  const y = (least + greatest) / 2;
  const edge = (line, x) => ({ ...line, points: [{ x, y: least }, { x, y }, { x: (from + to) / 2, y }] });
  return { ...piece, left: edge(left, from), right: edge(right, to) };
}

// side draws pieces beside one another, each under its name, or one alone with its
// measures and what was wanted of it. Those that lie beside one another already stay so.
export function side(all, wishes, outline, sized) {
  const gap = 16;
  const foot = margin.bottom + 22;
  const lie = apart(all);
  const width = (wide - margin.left - margin.right - gap * (all.length - 1)) / all.length;
  const parts = all.map((piece, i) => ({ piece: raised(piece, outline),
    ...scale(outline, lie ? { below: foot } : { left: margin.left + i * (width + gap), width, below: foot }) }));
  const names = all.length > 1 ? parts.map(({ piece, at }) => {
    const [from, to] = spanOf(piece);
    return said(piece.name, at({ x: (from + to) / 2, y: outline.y.least })[0], parts[0].height - 12, 'middle');
  }) : measures(all[0], parts[0], sized);
  return canvas(parts[0].height + (all.length > 1 ? 0 : 8),
    ...parts.flatMap(({ piece, at }) => pieceDrawn(piece, at, all.length === 1)),
    ...wishes.map((line) => stroke(line, parts[0].at, 'ring')), ...names);
}

// measures are written where there is room for them; the caption has them all.
function measures(piece, { at, height }, sized) {
  const [x] = at({ x: (piece.left.points[0].x + piece.right.points[0].x) / 2, y: piece.left.points[0].y });
  const [left, top] = at(piece.left.points.at(-1));
  const [right] = at(piece.right.points.at(-1));
  return [said(sized(widthOf(piece, 0)), x, height - 10, 'middle'),
    right - left > 90 ? said(sized(widthOf(piece, -1)), (left + right) / 2, top + 22, 'middle') : null];
}

// nested draws pieces about one centre line, as sizes lie in one another, with the name of
// each at its right edge, one above the other.
export function nested(all, outline) {
  const room = 110;
  const { height, at } = scale(outline, { width: wide - margin.left - room });
  const outer = all.reduce((a, b) => (spanOf(a)[1] > spanOf(b)[1] ? a : b));
  const edge = at({ x: outline.x.greatest, y: 0 })[0];
  const names = all.length > 12 ? [] : all.flatMap((piece, i) => {
    const y = height - margin.bottom - ((i + 1) / (all.length + 1)) * (height - margin.top - margin.bottom);
    const x = crossing(piece.right.points.map(at), y);
    return [drawn('line', { x1: x.toFixed(1), x2: edge + 6, y1: y.toFixed(1), y2: y.toFixed(1), class: 'stem' }), ...dots([[x, y]], 'mark', 3.5),
      said(piece.name.replace(/^size /, ''), edge + 10, y + 6)];
  });
  return canvas(height, fabric(pathOf(outer.right.points.map(at).concat(outer.left.points.map(at).reverse()))),
    ...all.flatMap((piece) => [stroke(piece.right, at), stroke(piece.left, at)]), ...names);
}

// crossing is where a line that rises comes by a height, y running downward; beyond its
// end, its end.
function crossing(points, y) {
  const i = points.findIndex((p) => p[1] <= y);
  if (i <= 0) return points.at(i)[0];
  const [a, b] = [points[i - 1], points[i]];
  return a[0] + (b[0] - a[0]) * ((a[1] - y) / (a[1] - b[1] || 1));
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
// another closed one takes out of it. Parts that lie above one another have their names.
export function plan(lines, outline) {
  const { height, at } = scale(outline);
  const knit = lines.filter((line) => !isWish(line) && !isMarks(line));
  const pairs = pieces(knit.filter(sideOf)).map(({ left, right }) => pathOf(right.points.map(at).concat(left.points.map(at).reverse())));
  const parts = knit.filter((line) => closed(line) && !isLimb(line));
  const around = pairs.concat(parts.map((line) => pathOf(line.points.map(at)))).join('Z');
  const few = knit.filter((line) => line.points.length > 2 && line.points.length <= mostCorners && !closed(line));
  const marks = lines.filter(isMarks).flatMap((line) => line.points);
  return canvas(height, around ? fabric(around, 'evenodd') : null,
    ...lines.filter((line) => !isMarks(line)).map((line) => stroke(line, at, isWish(line) || isHidden(line) ? 'ring' : 'line')),
    ...dots(few.flatMap((line) => line.points.map(at)), 'corner'), ...dots(marks.map(at), 'mark', marks.length > 300 ? 1.6 : 2.6),
    ...nameParts(parts, at), ...nameParts(lines.filter(isLimb), at));
}

const isLimb = (line) => /^limb\b/.test(line.name);

// nameParts writes the names of several parts into them, unless one lies in another.
function nameParts(parts, at) {
  const frames = parts.map(({ name, points }) => {
    const corners = points.map(at);
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    return { name: name.replace(/^limb |, behind$/g, ''), x: (Math.min(...xs) + Math.max(...xs)) / 2, top: Math.min(...ys), bottom: Math.max(...ys) };
  });
  const nested = frames.some((a) => frames.some((b) => a !== b && !isLimb(parts[0]) && a.top > b.top + 1 && a.bottom < b.bottom - 1));
  if (nested || parts.length < 2 && !isLimb(parts[0] ?? { name: '' })) return [];
  return frames.map(({ name, x, top, bottom }) => said(name, x, (top + bottom) / 2 + 6, 'middle'));
}

// top draws the tops of pieces whose lines go from one side to the other: the first
// that reaches deepest is fabric, and of the others one sees the edge behind it.
export function top(lines, outline) {
  const drop = (outline.x.greatest - outline.x.least) * 0.12;
  const { height, at } = scale({ x: outline.x, y: { ...outline.y, least: outline.y.least - drop } });
  const [front, ...behind] = lines;
  const ground = [front.points.at(-1), front.points[0]].map((p) => at({ x: p.x, y: outline.y.least - drop }));
  const middle = (line) => at(line.points[Math.floor(line.points.length / 2)]);
  const heights = lines.map((line) => middle(line)[1]);
  return canvas(height, fabric(pathOf(front.points.map(at).concat(ground))), ...behind.map((line) => stroke(line, at, 'ring')),
    stroke(front, at), said(front.name, wide / 2, heights[0] + 22, 'middle'),
    ...behind.map((line, i) => (heights[0] - heights[i + 1] > 24 ? said(line.name, wide / 2, heights[i + 1] + 22, 'middle') : null)));
}
