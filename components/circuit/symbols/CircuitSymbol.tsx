import type { ComponentType } from 'preact'
import type { SymbolProps } from '../types.ts'
import { CheckValve } from './CheckValve.tsx'
import { ElectricMotor } from './ElectricMotor.tsx'
import { EnginePump } from './EnginePump.tsx'
import { Filter } from './Filter.tsx'
import { FilterPair } from './FilterPair.tsx'
import { Gauge } from './Gauge.tsx'
import type { SymbolId } from './geometry.ts'
import { Header } from './Header.tsx'
import { HeatedTank } from './HeatedTank.tsx'
import { Heater } from './Heater.tsx'
import { Injectors } from './Injectors.tsx'
import { LineRun } from './LineRun.tsx'
import { MixingColumn } from './MixingColumn.tsx'
import { PressureValve } from './PressureValve.tsx'
import { Pump } from './Pump.tsx'
import { Reservoir } from './Reservoir.tsx'
import { Restriction } from './Restriction.tsx'
import { SightGlass } from './SightGlass.tsx'
import { Thermometer } from './Thermometer.tsx'
import { Viscometer } from './Viscometer.tsx'

const drawings: Record<SymbolId, ComponentType<SymbolProps>> = {
  reservoir: Reservoir,
  'heated-tank': HeatedTank,
  'mixing-column': MixingColumn,
  filter: Filter,
  'filter-pair': FilterPair,
  pump: Pump,
  'engine-pump': EnginePump,
  'electric-motor': ElectricMotor,
  'pressure-valve': PressureValve,
  'check-valve': CheckValve,
  restriction: Restriction,
  heater: Heater,
  'sight-glass': SightGlass,
  'supply-header': ({ count }) => <Header count={count} line="supply" />,
  'return-header': ({ count }) => <Header count={count} line="return" />,
  injectors: Injectors,
  'line-run': LineRun,
  'pressure-gauge': ({ turn }) => <Gauge turn={turn} of="pressure" />,
  'vacuum-gauge': ({ turn }) => <Gauge turn={turn} of="vacuum" />,
  'differential-gauge': ({ turn }) => <Gauge turn={turn} of="difference" />,
  thermometer: Thermometer,
  viscometer: Viscometer,
}

/** A symbol about the point (0, 0), turned clockwise; its letters stay upright. */
export function CircuitSymbol({ symbol, turn, count }: SymbolProps & { symbol: SymbolId }) {
  const Drawing = drawings[symbol]
  return (
    <g transform={turn === 0 ? undefined : `rotate(${turn})`}>
      <Drawing turn={turn} count={count} />
    </g>
  )
}
