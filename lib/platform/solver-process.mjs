// A process that solves integer programmes with HiGHS, compiled to WebAssembly: solving blocks it, and may take long. It is
// one of its own, and stands behind everything else, so that those who look at pages do not wait for those who plan.
import { createRequire } from 'node:module';
import os from 'node:os';

const highs = await createRequire(import.meta.url)('highs')({});
const { callbackType, modelStatus } = highs.constants;
const infinity = highs.infinity;

os.setPriority(os.constants.priority.PRIORITY_LOW);
// Whoever asked is gone.
process.on('disconnect', () => process.exit(0));
process.on('message', ({ id, programme, objective, seconds }) => {
  try {
    process.send({ id, ...solve(programme, objective, seconds, id) });
  } catch (error) {
    process.send({ id, failed: String(error?.message ?? error) });
  }
});

function solve(programme, objective, seconds, id) {
  const model = highs.createModel(modelOf(programme, objective));
  try {
    model.options.set({
      output_flag: false,
      time_limit: seconds,
      mip_rel_gap: 0,
      // Costs are multiples of a square centimetre, 0.0001: a nearer bound proves the best.
      mip_abs_gap: 0.00004,
      mip_feasibility_tolerance: 1e-9,
      primal_feasibility_tolerance: 1e-9,
      random_seed: 1,
    });
    const report = ({ data }) =>
      process.send({
        id,
        progress: { best: finite(data.mip_primal_bound), bound: finite(data.mip_dual_bound) },
      });
    const { modelStatus: status } = model.run({ [callbackType.mipLogging]: report });
    if (status === modelStatus.infeasible)
      return { status: 'infeasible', values: null, objective: null, bound: null, memoryBytes: highs.memoryBytes };
    const isBest = status === modelStatus.optimal || status === modelStatus.modelEmpty;
    const values = Array.from(model.getSolution().colValue);
    const found = isBest || model.info.get('primal_solution_status') === 2;
    return {
      status: isBest ? 'best' : 'stopped',
      values: found ? values : null,
      objective: found ? model.getObjectiveValue() : null,
      bound: isBest ? model.getObjectiveValue() : finite(model.info.get('mip_dual_bound')),
      memoryBytes: highs.memoryBytes,
    };
  } finally {
    model.dispose();
  }
}

function modelOf({ columns, rows }, objective) {
  const colCost = new Float64Array(columns.length);
  for (const [column, coefficient] of objective) colCost[column] += coefficient;
  const [starts, indices, values] = [[0], [], []];
  for (const { terms } of rows) {
    for (const [column, coefficient] of terms) {
      indices.push(column);
      values.push(coefficient);
    }
    starts.push(indices.length);
  }
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost,
    colLower: Float64Array.from(columns, ({ lower }) => bounded(lower)),
    colUpper: Float64Array.from(columns, ({ upper }) => bounded(upper)),
    rowLower: Float64Array.from(rows, ({ least }) => bounded(least)),
    rowUpper: Float64Array.from(rows, ({ most }) => bounded(most)),
    integrality: Int32Array.from(columns, ({ whole }) => (whole ? 1 : 0)),
    matrix: { format: 'csr', numRows: rows.length, numCols: columns.length, starts, indices, values },
  };
}

function bounded(value) {
  return Number.isFinite(value) ? value : Math.sign(value) * infinity;
}

function finite(value) {
  return Number.isFinite(value) && Math.abs(value) < 1e29 ? value : null;
}
