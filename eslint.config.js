// Lint rules of the house.
import ts from 'typescript-eslint';

export default ts.config({ ignores: ['dist', 'dist-single', 'node_modules'] }, ...ts.configs.recommended);
