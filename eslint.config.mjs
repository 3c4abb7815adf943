import next from 'eslint-config-next/core-web-vitals';
import typescript from 'eslint-config-next/typescript';

/** What the maths may not touch: the clock, chance, and the world. */
const impure = ['Date', 'process', 'fetch', 'console', 'setTimeout', 'setInterval', 'crypto'].map((name) => ({
  name,
  message: 'The maths has no clock, no chance and no world: pass what it needs as an argument.',
}));

const onlyEnv = {
  selector: "MemberExpression[object.name='process'][property.name='env']",
  message: 'The environment is read in lib/platform/env.ts alone.',
};

const config = [
  {
    ignores: [
      '.next/**',
      'generated/**',
      'node_modules/**',
      '.data/**',
      'test-results/**',
      'playwright-report/**',
      'coverage/**',
      'next-env.d.ts',
    ],
  },
  ...next,
  ...typescript,
  {
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', ignoreRestSiblings: true }],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-console': 'error',
      'prefer-const': 'error',
    },
  },
  { files: ['{scripts,seeds,tests}/**'], rules: { 'no-console': 'off' } },
  { files: ['lib/platform/log.ts'], rules: { 'no-console': 'off' } },
  {
    files: ['{app,lib}/**/*.{ts,tsx}'],
    ignores: ['lib/platform/env.ts', 'lib/domain/**', '**/*.test.{ts,tsx}'],
    rules: { 'no-restricted-syntax': ['error', onlyEnv] },
  },
  {
    files: ['lib/domain/**/*.ts'],
    ignores: ['**/*.test.ts'],
    rules: {
      'no-restricted-globals': ['error', ...impure],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Lots are drawn from a seed.' },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: ':function[async=true]', message: 'The maths never waits.' },
        { selector: 'AwaitExpression', message: 'The maths never waits.' },
      ],
    },
  },
];

export default config;
