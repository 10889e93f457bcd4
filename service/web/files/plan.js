// Plans that are drawn as they lie: wedges with their turning points, tops with their necks,
// whatever has an edge all round, and lines against one another.

import { canvas, margin, pathOf, said, scale, wide } from './canvas.js';
import { corners, dots, fabric, isHidden, isMarks, isWish, spanOf, stroke } from './lines.js';
import { across, beside, room } from './measured.js';
import { pieces, sideOf } from './pieces.js';

// Rows below a wedge, so that its lowest part is seen to be fabric.
const below = 2;
// More turning points than this would touch one another.
const mostTurns = 60;

// closed tells a line with fabric inside: it comes back to where it began, or from its
// foot over the top to the other end of its foot.
function closed({ points }) {
  const [first, last] = [points[0], points.at(-1)];
  const least = Math.min(...points.map((p) => p.y));
  return points.length > 3 && (Math.hypot(first.x - last.x, first.y - last.y) < 1e-6 || first.y === least && last.y === least);
}

// turns are the points of a wedge's edge where rows turn: where it climbs, or, where each turn
// makes a stitch double, which is a row higher, in the middle of that stitch. Where turns lie
// too near to be told apart there are none.
export function turns(line, count) {
  const climbs = line.points.filter((point, i) => i > 0 && point.x === line.points[i - 1].x);
  if (climbs.length === count) return climbs;
  if (climbs.length !== 2 * count) return [];
  return climbs.filter((_, i) => i % 2).map((p, i) => ({ x: (p.x + climbs[2 * i].x) / 2, y: Math.min(p.y, climbs[2 * i].y) }));
}

// sizeOf is how far lines reach across and up.
export function sizeOf(lines) {
  const points = lines.flatMap((line) => line.points);
  const [[left, right], [foot, top]] = [spanOf(points, 'x'), spanOf(points, 'y')];
  return { left, right, foot, top };
}

// around are measures below what is drawn and to its right. What is as high as it is wide has
// one of them alone.
function around({ left, right, foot, top }, at, say, name = '') {
  const [x, ground] = at({ x: left, y: foot });
  const [edge, height] = at({ x: right, y: top });
  return [...across(x, edge, ground + 12, say.across(right - left, name, 'below')),
    ...isAlike({ left, right, foot, top }) ? [] : beside(edge + 14, ground, height, say.up(top - foot, name))];
}

const isAlike = ({ left, right, foot, top }) => Math.abs(right - left - (top - foot)) < 0.01 * (right - left);

// beyond is the room that around takes.
const beyond = { below: room.line, width: wide - margin.left - margin.right - room.side };

// wedge draws the upper edge of fabric, and marks where its rows turn.
export function wedge(lines, outline, say, marks) {
  const edge = lines.find((line) => line.name === 'top edge');
  const { height, at } = scale({ x: outline.x, y: { ...outline.y, least: outline.y.least - below } }, beyond);
  const base = { y: outline.y.least - below };
  const ground = [edge.points.at(-1), edge.points[0]].map((p) => at({ x: p.x, ...base }));
  const { left, right, foot, top } = sizeOf([edge]);
  return canvas(height, fabric(pathOf(edge.points.map(at).concat(ground))),
    ...lines.map((line) => stroke(line, at, line === edge ? 'line' : 'ring')),
    ...dots(marks.length <= mostTurns ? marks.map(at) : [], 'mark', 5),
    ...across(at({ x: left, y: 0 })[0], at({ x: right, y: 0 })[0], at({ x: 0, ...base })[1] + 12, say.across(right - left, '', 'below')),
    ...beside(at({ x: right, y: 0 })[0] + 14, at({ x: 0, y: foot })[1], at({ x: 0, y: top })[1], say.up(top - foot, '')));
}

// plan draws lines as they lie; what a closed one encloses is fabric, but for what
// another closed one takes out of it. Parts that lie above one another have their names.
export function plan(lines, outline, say) {
  const knit = lines.filter((line) => !isWish(line) && !isMarks(line));
  const size = sizeOf(knit);
  const { height, at } = scale(outline, isAlike(size) ? { below: room.line } : beyond);
  const pairs = pieces(knit.filter(sideOf)).map(({ left, right }) => pathOf(right.points.map(at).concat(left.points.map(at).reverse())));
  const parts = knit.filter((line) => closed(line) && !isLimb(line));
  const inside = pairs.concat(parts.map((line) => pathOf(line.points.map(at)))).join('Z');
  const marks = lines.filter(isMarks).flatMap((line) => line.points);
  return canvas(height, inside ? fabric(inside, 'evenodd') : null,
    ...lines.filter((line) => !isMarks(line)).map((line) => stroke(line, at, isWish(line) || isHidden(line) ? 'ring' : 'line')),
    ...corners(knit.filter((line) => !closed(line)), at), ...dots(marks.map(at), 'mark', marks.length > 300 ? 1.6 : 2.6),
    ...nameParts(partsOf(lines), at, say), ...nameLimbs(lines.filter(isLimb), at), ...around(size, at, say));
}

const isLimb = (line) => /^limb\b/.test(line.name);

// partsOf are the parts of a plan that lie above one another, where there are several.
export function partsOf(lines) {
  const parts = lines.filter((line) => !isWish(line) && !isMarks(line) && !isLimb(line) && closed(line));
  const sizes = parts.map((line) => sizeOf([line]));
  const nested = sizes.some((a) => sizes.some((b) => a !== b && a.top < b.top && a.foot > b.foot));
  return parts.length > 1 && !nested ? parts.map((line, i) => ({ name: line.name, ...sizes[i] })) : [];
}

// nameParts writes names and sizes of parts into them.
function nameParts(parts, at, say) {
  return parts.map(({ name, left, right, foot, top }) => said([name, [say.across(right - left, name, 'below'), ...say.up(top - foot, name)].join(', ')],
    ...at({ x: (left + right) / 2, y: (foot + top) / 2 }), 'middle'));
}

// nameLimbs writes the numbers of limbs into them.
function nameLimbs(limbs, at) {
  return limbs.map((line) => {
    const { left, right, foot, top } = sizeOf([line]);
    const [x, y] = at({ x: (left + right) / 2, y: (foot + top) / 2 });
    return said(line.name.replace(/^limb |, behind$/g, ''), x, y + 6, 'middle');
  });
}

// openingOf is how wide a neck is where the shoulders end beside it.
export function openingOf({ points }) {
  const top = Math.max(...points.map((p) => p.y));
  return 2 * Math.min(...points.filter((p) => p.y === top).map((p) => Math.abs(p.x)));
}

// depthOf is how deep a neck lies below the ends of the shoulders.
export function depthOf({ points }) {
  return Math.max(...points.map((p) => p.y)) - points[Math.floor(points.length / 2)].y;
}

// top draws the tops of pieces whose lines go from one side to the other: the first
// that reaches deepest is fabric, and of the others one sees the edge behind it.
export function top(lines, outline, say) {
  const drop = (outline.x.greatest - outline.x.least) * 0.16;
  const { height, at } = scale({ x: outline.x, y: { ...outline.y, least: outline.y.least - drop } }, { above: room.line });
  const [front, ...behind] = lines;
  const ground = [front.points.at(-1), front.points[0]].map((p) => at({ x: p.x, y: outline.y.least - drop }));
  const heights = lines.map((line) => at(line.points[Math.floor(line.points.length / 2)])[1]);
  const words = (line) => (depthOf(line) ? [line.name, say.up(depthOf(line), line.name).join(', ')] : [line.name]);
  const half = openingOf(front) / 2;
  const level = at({ x: 0, y: outline.y.greatest })[1] - 10;
  return canvas(height, fabric(pathOf(front.points.map(at).concat(ground))), ...behind.map((line) => stroke(line, at, 'ring')),
    stroke(front, at), said(words(front), wide / 2, heights[0] + 24, 'middle'),
    ...behind.map((line, i) => {
      const free = heights[0] - heights[i + 1];
      return free < 26 ? null : said(words(line).slice(0, free < 56 ? 1 : 2), wide / 2, heights[i + 1] + 22, 'middle');
    }),
    ...across(at({ x: -half, y: 0 })[0], at({ x: half, y: 0 })[0], level, say.across(2 * half, 'neck', 'below'), true));
}
