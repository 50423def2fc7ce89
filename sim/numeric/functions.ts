// The only door to exp, logarithms and powers in sim and lessons: pure-JavaScript versions that give
// the same bits in every engine (the built-in ones do not agree between browsers).
export { default as exp } from '@stdlib/math-base-special-exp';
export { default as expm1 } from '@stdlib/math-base-special-expm1';
export { default as ln } from '@stdlib/math-base-special-ln';
export { default as log10 } from '@stdlib/math-base-special-log10';
export { default as pow } from '@stdlib/math-base-special-pow';
