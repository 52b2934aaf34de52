import litPlugin from 'eslint-plugin-lit';
import litA11y from 'eslint-plugin-lit-a11y';
import wc from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';

const noNamed = (selectors) => ['error', ...selectors];

/** A later block replaces the selectors of an earlier one, so each block that has its own takes these too. */
const houseStyle = [
  { selector: 'ExportDefaultDeclaration', message: 'Export by name.' },
  { selector: 'TSEnumDeclaration', message: 'Use a union of strings.' },
  { selector: 'TSParameterProperty', message: 'Write the field out.' },
];

export default tseslint.config(
  { ignores: ['dist/**', 'node_modules/**', 'demo/**/*.js'] },
  ...tseslint.configs.recommended,
  {
    files: ['**/*.ts', '**/*.js'],
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-loss-of-precision': 'error',
      'no-compare-neg-zero': 'error',
      'no-self-assign': 'error',
      'no-console': 'off',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
    },
  },
  {
    files: ['core/**/*.ts', 'components/**/*.ts'],
    rules: { 'no-console': 'error' },
  },
  {
    // The compiler keeps the DOM out of core; these keep out clock, chance and locale.
    files: ['core/**/*.ts'],
    rules: {
      'no-restricted-globals': noNamed(['Intl', 'window', 'document', 'localStorage', 'navigator', 'performance']),
      'no-restricted-properties': noNamed([
        { object: 'Date', property: 'now', message: 'The instant is an argument.' },
        { object: 'Date', property: 'parse', message: 'Use core/time to read text.' },
        { object: 'Math', property: 'random', message: 'Chance comes from a seed.' },
      ]),
      'no-restricted-syntax': noNamed([
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'The instant is an argument.' },
        { selector: 'CallExpression[callee.property.name=/^toLocale/]', message: 'Words and locale belong to components.' },
        ...houseStyle,
      ]),
    },
  },
  {
    files: ['core/**/*.ts'],
    ignores: ['core/angle/trigonometry.ts'],
    rules: {
      'no-restricted-properties': noNamed([
        ...['sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2'].map((property) => ({
          object: 'Math',
          property,
          message: 'Angles are degrees: use core/angle/trigonometry.',
        })),
        { object: 'Date', property: 'now', message: 'The instant is an argument.' },
        { object: 'Date', property: 'parse', message: 'Use core/time to read text.' },
        { object: 'Math', property: 'random', message: 'Chance comes from a seed.' },
      ]),
    },
  },
  {
    files: ['components/**/*.ts'],
    plugins: { lit: litPlugin, 'lit-a11y': litA11y, wc },
    rules: {
      ...litPlugin.configs['flat/recommended'].rules,
      ...wc.configs['flat/recommended'].rules,
      'lit-a11y/no-autofocus': 'error',
      'lit-a11y/no-redundant-role': 'error',
      'lit-a11y/tabindex-no-positive': 'error',
      'lit-a11y/valid-lang': 'error',
      'lit-a11y/click-events-have-key-events': 'error',
      // A strict content security policy refuses style attributes and <style> in a template.
      'no-restricted-syntax': noNamed([
        { selector: "TemplateElement[value.raw=/\\sstyle=|<style/]", message: 'No style attribute and no <style>: a strict policy refuses them.' },
        { selector: "Identifier[name='styleMap']", message: 'styleMap writes a style attribute on first render.' },
        ...houseStyle,
      ]),
      'no-restricted-globals': noNamed(
        ['fetch', 'XMLHttpRequest', 'WebSocket', 'EventSource'].map((name) => ({ name, message: 'A widget makes no request, ever.' })),
      ),
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      'no-restricted-syntax': noNamed([
        { selector: "MemberExpression[object.name=/^(it|describe|test)$/][property.name=/^(only|skip|todo)$/]", message: 'Every test runs, always.' },
        {
          selector: 'ChainExpression > CallExpression[callee.property.name=/^(click|focus|blur|select|submit|requestSubmit|showModal|dispatchEvent)$/]',
          message: 'A press of what is not there passes in silence: must(...) of tests/support/in-widget.ts.',
        },
      ]),
    },
  },
);
