// The measurements: ratios taken side by side in one run, written to docs/. Never part of the tests.
import { spawn } from 'node:child_process';

const bench = spawn(process.execPath, ['--expose-gc', '--import', 'tsx', 'tests/load/bench.ts'], { stdio: 'inherit' });
bench.on('exit', (code) => process.exit(code ?? 1));
