#!/usr/bin/env node
// Kept to syntax that any old Node reads, so that the sentence below can be printed at all.
var version = process.versions.node.split('.').map(Number);
if (version[0] < 20 || (version[0] === 20 && version[1] < 19)) {
  console.error('Barrowmoot needs Node 20.19 or newer; this is Node ' + process.versions.node + '.');
  process.exit(1);
}
import('./test/run.mjs').then(function (module) {
  return module.run(process.argv.slice(2));
});
