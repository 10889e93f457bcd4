// Writes build/<client>/ask.ts for each generated client: code as a caller would
// write it, that asks every operation and one question with a fault. The questions
// are literals, so that the compiler holds them to the client's types.
import { writeFileSync } from 'node:fs';
import { operations } from './questions.mjs';

const list = operations(process.argv[2]);
const literal = (value) => JSON.stringify(value);
const first = list.find((operation) => operation.verb === 'post');
const faulty = '{ no_such_field: 1 } as never';

const clients = {
  'openapi-typescript': {
    head: [
      `import createClient from 'openapi-fetch';`,
      `import type { paths } from './schema';`,
      `const client = createClient<paths>({ baseUrl: process.env.KNITMATH_ADDRESS });`,
    ],
    ask: ({ verb, path }, question) => {
      const how = verb === 'get' ? `params: { query: ${question} }` : `body: ${question}`;
      return `const { data, error } = await client.${verb.toUpperCase()}(${literal(path)}, { ${how} });`;
    },
    data: 'data',
    error: () => 'error',
  },
  'hey-api': {
    head: [
      `import { ${list.map((operation) => operation.id).join(', ')} } from './sdk.gen';`,
      `import { client } from './client.gen';`,
      `client.setConfig({ baseUrl: process.env.KNITMATH_ADDRESS });`,
    ],
    ask: ({ id, verb }, question) =>
      `const { data, error } = await ${id}({ ${verb === 'get' ? 'query' : 'body'}: ${question} });`,
    data: 'data',
    error: () => 'error',
  },
  orval: {
    head: [`import { ${list.map((operation) => operation.id).join(', ')} } from './client';`],
    ask: ({ id }, question) => `const reply = await ${id}(${question});`,
    data: 'reply.status === 200 ? reply.data : undefined',
    // Only what was kept may still hold, and only questions by GET are kept.
    error: ({ verb, path }) =>
      verb === 'get' && path !== '/version'
        ? 'reply.status === 200 || reply.status === 304 ? undefined : reply.data'
        : 'reply.status === 200 ? undefined : reply.data',
  },
};

for (const [name, client] of Object.entries(clients)) {
  const lines = [...client.head, `import type { Tally } from '../../src/tally';`, ``];
  lines.push(`export async function ask(tally: Tally): Promise<void> {`);
  for (const operation of list) {
    lines.push(`  {`, `    ${client.ask(operation, literal(operation.question))}`);
    lines.push(`    tally.answer(${literal(operation.id)}, ${client.data}, ${client.error(operation)});`, `  }`);
  }
  lines.push(`  {`, `    ${client.ask(first, faulty)}`);
  lines.push(`    tally.refusal(${literal(first.id)}, ${client.data}, ${client.error(first)});`, `  }`, `}`, ``);
  writeFileSync(`build/${name}/ask.ts`, lines.join('\n'));
}
