// `npm run schema`: writes static/exercise.schema.json anew, after a change of the form of an exercise.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { exerciseJson } from './exerciseJson';

const path = fileURLToPath(new URL('../../static/exercise.schema.json', import.meta.url));
writeFileSync(path, await exerciseJson(path));
console.log(`Written to ${path}`);
