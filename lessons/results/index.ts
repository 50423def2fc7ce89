// Door of the results.

export { boardOf, type Board, type BoardRow, type JudgedResult, type Lost } from './board';
export { judging, VERDICTS, type Judgement, type Verdict } from './judging';
export { readResult, type ReadResult, type ResultProblem, type ResultProblemKey } from './readResult';
export { packResult, writeResult } from './resultFile';
export { resultOf, type AboutResult } from './resultOf';
export { joinParts, MOST_PARTS, partOf, resultParts, type Joined, type PartOf } from './resultParts';
export { RESULT_FORMAT, RESULT_FORMAT_VERSION, RESULT_LIMIT, type Result } from './resultSchema';
