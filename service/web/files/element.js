// One place that makes elements, so that no text is ever read as markup.

const svgSpace = 'http://www.w3.org/2000/svg';

// fill gives a node its attributes, listeners (functions) and children.
function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (typeof value === 'function') node.addEventListener(name, value);
    else if (value === true) node.setAttribute(name, '');
    else if (value !== false && value !== undefined && value !== null) node.setAttribute(name, value);
  }
  node.append(...children.filter((child) => child !== null && child !== undefined && child !== ''));
  return node;
}

export function el(tag, attributes, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

export function drawn(tag, attributes, ...children) {
  return fill(document.createElementNS(svgSpace, tag), attributes, children);
}
