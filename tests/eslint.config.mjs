/** The top level is fixed, so the linter's settings stand here; `npm run lint` names this file. */
import astro from 'eslint-plugin-astro';
import hooks from 'eslint-plugin-react-hooks';
import ts from 'typescript-eslint';

export default ts.config(
  { ignores: ['dist/', '.astro/', 'tests/**/fixtures/'] },
  {
    files: ['**/*.{ts,tsx}'],
    extends: [ts.configs.recommendedTypeChecked, ts.configs.stylisticTypeChecked],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: new URL('..', import.meta.url).pathname },
    },
    rules: {
      // Brackets say that a key may be missing.
      '@typescript-eslint/dot-notation': ['error', { allowIndexSignaturePropertyAccess: true }],
      // It asks for `!`, which another rule of the set forbids.
      '@typescript-eslint/non-nullable-type-assertion-style': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
    },
  },
  // The linter does not see into .astro files.
  {
    files: ['src/components/mdx-components.ts'],
    rules: { '@typescript-eslint/no-unsafe-assignment': 'off' },
  },
  {
    files: ['src/islands/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': hooks },
    rules: { 'react-hooks/rules-of-hooks': 'error', 'react-hooks/exhaustive-deps': 'error' },
  },
  ...astro.configs['flat/recommended'],
  { files: ['**/*.astro'], languageOptions: { parserOptions: { parser: ts.parser } } },
);
