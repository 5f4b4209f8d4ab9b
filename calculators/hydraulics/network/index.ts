export type { Law, Link, Loss, Net, Node } from './net.ts'
export { prepareNet, type PreparedNet } from './prepare.ts'
export { solveNet, type NetSolution, type NetValues, type SolveOptions } from './solve.ts'
