import { AnalysisStatistic, InitHydOption, LinkProperty, NodeProperty, Project, Workspace } from 'epanet-js'
import { GRAVITY } from '../../../calculators/hydraulics/hydrostatics.ts'
import { EPANET_GRAVITY, epanetText, type Case } from './case.ts'

export interface EngineResult {
  /** By id of the part. [m³/s] */
  readonly flows: ReadonlyMap<string, number>
  /** By id of the point. [Pa] */
  readonly pressures: ReadonlyMap<string, number>
  /** Sum of the changes of flow over the sum of flows at the last iteration. [-] */
  readonly relativeError: number
}

/** The finest that the engine takes; its default is 0.001. [-] */
export const FINEST_ACCURACY = 1e-5

/** Opens the engine on a network, with its hydraulic solver open. */
export async function openEngine(network: Case, accuracy: number): Promise<Project> {
  const workspace = new Workspace()
  await workspace.loadModule()
  workspace.writeFile('net.inp', epanetText(network, accuracy))
  const project = new Project(workspace)
  project.open('net.inp', 'report.rpt', '')
  project.openH()
  return project
}

export async function solveByEngine(network: Case): Promise<EngineResult> {
  const project = await openEngine(network, FINEST_ACCURACY)
  project.initH(InitHydOption.NoSave)
  project.runH()
  const { density } = network.fuel
  const flows = new Map(
    network.parts.map(({ id }) => [
      id,
      project.getLinkValue(project.getLinkIndex(id), LinkProperty.Flow) / 1000,
    ]),
  )
  const pressures = new Map(
    network.points.map(({ id, height = 0 }) => {
      const head = project.getNodeValue(project.getNodeIndex(id), NodeProperty.Head)
      return [id, (head - (height * GRAVITY) / EPANET_GRAVITY) * density * EPANET_GRAVITY]
    }),
  )
  const relativeError = project.getStatistic(AnalysisStatistic.RelativeError)
  project.closeH()
  project.close()
  return { flows, pressures, relativeError }
}
