// Every operation of the document with a question that has an answer, out of the
// wire cases in testdata/<room>/*.json.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const wireCases = '..';

/** operations lists { id, verb, path, question }; a question by GET is flat. */
export function operations(documentFile) {
  const document = read(documentFile);
  const cases = goodCases();
  const list = [];
  for (const [path, item] of Object.entries(document.paths)) {
    for (const [verb, operation] of Object.entries(item)) {
      // What is no question is asked for as it is.
      const known = item.post ? (cases.get(path) ?? []) : [{}];
      const questions = verb === 'get' ? known.map((question) => flat(question)).filter(Boolean) : known;
      if (questions.length === 0) throw new Error(`no wire case can be asked by ${verb} ${path}`);
      list.push({ id: operation.operationId, verb, path, question: item.post && questions[0] });
    }
  }
  return list;

  // goodCases are the questions of wire cases that are no tables of bad ones, by
  // the path of their method: operations by POST are named after the method.
  function goodCases() {
    const paths = new Map();
    for (const [path, item] of Object.entries(document.paths)) if (item.post) paths.set(item.post.operationId, path);
    const found = new Map();
    for (const file of jsonFiles()) {
      const { method, request } = read(file);
      if (method === undefined || request === undefined) continue;
      const name = method.split('/')[1];
      const path = paths.get(name[0].toLowerCase() + name.slice(1));
      found.set(path, [...(found.get(path) ?? []), request]);
    }
    return found;
  }
}

function jsonFiles() {
  const files = [];
  for (const room of readdirSync(wireCases, { withFileTypes: true })) {
    if (!room.isDirectory() || room.name === 'clients' || room.name === 'scenario') continue;
    for (const name of readdirSync(join(wireCases, room.name)).sort()) {
      if (name.endsWith('.json')) files.push(join(wireCases, room.name, name));
    }
  }
  return files;
}

function read(file) {
  return JSON.parse(readFileSync(file, 'utf8'));
}

// flat writes a question as parameters of a query, nothing if it has a list of
// objects.
function flat(question, prefix = '') {
  const parameters = {};
  for (const [name, value] of Object.entries(question)) {
    if (Array.isArray(value)) {
      if (value.some((item) => typeof item === 'object')) return undefined;
      parameters[prefix + name] = value;
    } else if (typeof value === 'object') {
      const below = flat(value, `${prefix}${name}.`);
      if (below === undefined) return undefined;
      Object.assign(parameters, below);
    } else {
      parameters[prefix + name] = value;
    }
  }
  return parameters;
}
