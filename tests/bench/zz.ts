import { SUBMODELS } from './submodels';
const best = (f: () => void): number => { let b = 1e9; for (let r = 0; r < 600; r++) { const t = performance.now(); for (let n = 0; n < 50; n++) f(); b = Math.min(b, (performance.now() - t)*20); } return b; };
for (const s of SUBMODELS.slice(0,5)) console.log(s.what, best(s.once).toFixed(2));
