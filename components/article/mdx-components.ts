import Calculator from '../calculator/Calculator.astro'
import CircuitBench from '../circuit/bench/CircuitBench.astro'
import CircuitDrawing from '../circuit/CircuitDrawing.astro'
import CircuitParts from '../circuit/CircuitParts.astro'
import GlassSigns from '../circuit/GlassSigns.astro'
import Caution from './Caution.astro'
import Cite from './Cite.astro'
import Claim from './Claim.astro'
import Curves from './Curves.astro'
import Formula from './Formula.astro'
import FromMemory from './FromMemory.astro'
import FuelTable from './FuelTable.astro'
import PageLink from './PageLink.astro'
import Practice from './Practice.astro'
import Quantity from './Quantity.astro'
import SetPointTable from './SetPointTable.astro'
import Setpoint from './Setpoint.astro'
import Sketch from './Sketch.astro'
import SketchFigure from './SketchFigure.astro'
import Table from './Table.astro'

/** What an article can use without an import, and what stands in for plain Markdown elements. */
export const mdxComponents = {
  Calculator,
  CircuitBench,
  CircuitDrawing,
  CircuitParts,
  Caution,
  Cite,
  Claim,
  Curves,
  Formula,
  FromMemory,
  FuelTable,
  GlassSigns,
  PageLink,
  Practice,
  Quantity,
  SetPointTable,
  Setpoint,
  Sketch,
  SketchFigure,
  table: Table,
}
