import { type CallExpression, type Expression, type FunctionExpression, type Node, parse, type VariableDeclarator } from 'acorn';

/** What a run of ours never calls: to change or copy an engine, to take facts by functions, to print. A call of one says so. */
const unreached = new Set([
  'updateRule', 'removeRule', 'setCondition', 'removeCondition', 'removeOperator', 'removeOperatorDecorator', 'removeFact', 'stop',
  'getEvent', 'getPriority', 'getConditions', 'getEngine', 'toJSON', '_addConstantFact', 'addRuntimeFact', 'resolveEventParams', 'isDynamic', 'hashFromObject',
]);

/** What babel writes into each file for browsers that have no classes and modules. */
const helpers = /^_(?:typeof|createClass|slicedToArray|interopRequireDefault|classCallCheck|possibleConstructorReturn|inherits)$/;

const callOf = (name: string, node: Expression | null | undefined): CallExpression | undefined => (node?.type === 'CallExpression' && node.callee.type === 'Identifier' && node.callee.name === name ? node : undefined);

/**
 * A file of json-rules-engine as a module with classes: the same code, without what babel 6 made of it for older browsers, without its lines for debugging, and without the methods that we never call.
 *
 * @throws Error where the file is not written as babel 6 writes
 */
export const leanEngine = (source: string): string => {
  const textOf = ({ start, end }: Node): string => source.slice(start, end);
  const required = new Map<string, string>();

  const methodOf = (written: Expression, before: string): string => {
    if (written.type !== 'ObjectExpression') throw new Error('a method was to be an object');
    const [key, value] = written.properties.map((each) => (each.type === 'Property' ? each.value : undefined));
    if (key?.type !== 'Literal' || value?.type !== 'FunctionExpression') throw new Error('a method was to be a key and a value');
    const name = String(key.value);
    const body = unreached.has(name) ? "{ throw new Error('not in this build'); }" : textOf(value.body);
    return `${before}${name}(${value.params.map(textOf).join()}) ${body}`;
  };

  /** `var Name = function (_Parent) { … }(parent)` as a class. */
  const classOf = (name: string, { body: { body } }: FunctionExpression, parent: Expression | undefined): string => {
    const made = body.find((each) => each.type === 'FunctionDeclaration');
    if (made === undefined) throw new Error(`${name} was to have a constructor`);
    const methods = body.flatMap((each) => (each.type === 'ExpressionStatement' ? (callOf('_createClass', each.expression) ?? []) : []))[0];
    const [own = [], fixed = []] = (methods?.arguments.slice(1) ?? []).map((list) => {
      if (list.type !== 'ArrayExpression') throw new Error(`the methods of ${name} were to be a list`);
      return list.elements as Expression[];
    });
    const start = textOf(made.body)
      .replace(/_possibleConstructorReturn\(this, \(.*\)\.call\.apply\(_ref, \[this\]\.concat\((\w+)\)\)\);/, '(super(...$1), this);')
      .replace(/_possibleConstructorReturn\(this, \(.*\)\.call\(this\)\);/, '(super(), this);')
      .replace(/_classCallCheck\(.*\);/, '');
    return `class ${name} ${parent === undefined ? '' : `extends ${textOf(parent)} `}{\nconstructor(${made.params.map(textOf).join()}) ${start}\n${[...own.map((each) => methodOf(each, '')), ...fixed.map((each) => methodOf(each, 'static '))].join('\n')}\n}`;
  };

  const declared = ({ id, init }: VariableDeclarator): string => {
    const name = textOf(id);
    if (helpers.test(name)) return '';
    const value = init?.type === 'AssignmentExpression' && textOf(init.left).startsWith('exports.') ? init.right : init;
    const shown = value === init ? '' : 'export ';
    const [require, whole] = [callOf('require', value), callOf('_interopRequireDefault', value)];
    if (require !== undefined) {
      required.set(name, textOf(require.arguments[0]!));
      return '';
    }
    if (whole !== undefined) {
      const from = textOf(whole.arguments[0]!);
      const path = required.get(from);
      required.delete(from);
      return path === "'./debug'" ? '' : `import * as ${name} from ${path};`;
    }
    if (value?.type === 'CallExpression' && value.callee.type === 'FunctionExpression') return `${shown}${classOf(name, value.callee, value.arguments[0] as Expression | undefined)}`;
    return `${shown}var ${name} = ${textOf(value!)};`;
  };

  const written = parse(source, { ecmaVersion: 2020, sourceType: 'script' }).body.map((each): string => {
    if (each.type === 'VariableDeclaration') return each.declarations.map(declared).join('\n');
    if (each.type === 'FunctionDeclaration' && helpers.test(each.id.name)) return '';
    const text = textOf(each);
    if (each.type !== 'ExpressionStatement') return text;
    if (each.directive !== undefined || text.startsWith('Object.defineProperty(exports') || /^exports\..* = undefined;$/.test(text)) return '';
    if (text.startsWith('module.exports')) return 'export { Engine, Fact } from \'./json-rules-engine\';';
    return text.replace(/^exports\.default = /, 'export default ').replace(/^exports\.(\w+) = (.*);$/, 'export const $1 = $2;');
  }).join('\n');
  const imports = [...required].map(([name, path]) => `import * as ${name} from ${path};`).join('\n');
  const lean = `${imports}\n${written}`.replace(/\(0, _debug2\.default\)\([^;]*\);/g, '').replace(/_typeof\(/g, 'typeof (').replace(/_slicedToArray\((\w+), \d\)/g, '$1');
  const left = /exports\.|_debug2|_(?:createClass|interopRequire|possible|classCall|inherits)/.exec(lean);
  if (left !== null) throw new Error(`json-rules-engine is written otherwise than expected, at \`${left[0]}\``);
  return lean;
};
