/**
 * Packages of one function that is rarely called, and that do much when they are loaded: in the bundle they are loaded
 * by the first call.
 * @param {string[]} names
 * @returns {import('esbuild').Plugin}
 */
export function loadedWhenCalled(names) {
  return {
    name: 'loaded-when-called',
    setup(build) {
      const filter = new RegExp(`^(?:${names.join('|')})$`);
      build.onResolve({ filter }, ({ path, kind, namespace, resolveDir }) =>
        kind === 'import-statement' && namespace === 'file' && !resolveDir.includes('node_modules')
          ? { path, namespace: 'when-called', pluginData: resolveDir }
          : undefined,
      );
      build.onLoad({ filter, namespace: 'when-called' }, ({ path, pluginData }) => ({
        contents: `let call; export default (...words) => (call ??= require('${path}').default)(...words);`,
        resolveDir: pluginData,
      }));
    },
  };
}
