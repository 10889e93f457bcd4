// Asks the service at KNITMATH_ADDRESS through every generated client.
import { ask as askHeyApi } from '../build/hey-api/ask';
import { ask as askOpenapiTypescript } from '../build/openapi-typescript/ask';
import { ask as askOrval } from '../build/orval/ask';
import { Tally } from './tally';

async function main(): Promise<void> {
  let passed = 0;
  let failed = 0;
  for (const [name, ask] of Object.entries({
    '@hey-api/openapi-ts': askHeyApi,
    'openapi-typescript': askOpenapiTypescript,
    orval: askOrval,
  })) {
    const tally = new Tally(name);
    await ask(tally);
    console.log(`${name}: ${tally.answered} operations answered, ${tally.refused} question refused with its fault`);
    for (const fault of tally.faults) console.error(fault);
    passed += tally.answered + tally.refused;
    failed += tally.faults.length;
  }
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = passed > 0 && failed === 0 ? 0 : 1;
}

void main();
