import type { Notice, Refusal, Step, ValuesOf } from '../../calculator/types.ts'
import { blendByRefutas, blendByWalther, shareByWalther, type BlendPart } from '../../fuel/viscosity-blend.ts'
import { doubleLogarithm } from '../../fuel/viscosity-walther.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** From this ratio of viscosities on the rules drift apart and a trial blend is due: common practice. */
const FAR_APART = 20

const viscosityInWords = (value: number) => inWords(value, 'kinematicViscosity')

function refusalOf(input: Values): Refusal | undefined {
  const { firstViscosity, secondViscosity, wantedViscosity } = input
  if (input.wanted === 'blend-of-three') {
    const both = input.secondShare + input.thirdShare
    if (both <= 1) return undefined
    return {
      field: 'thirdShare',
      reason: `${inputs.secondShare.label} and ${inputs.thirdShare.label.toLowerCase()} come to ${(both * 100).toFixed(1)} %`,
      accepted: `up to ${((1 - input.secondShare) * 100).toFixed(1)} % beside the second one`,
    }
  }
  if (input.wanted !== 'share') return undefined
  if (Math.abs(secondViscosity / firstViscosity - 1) < 1e-6) {
    return {
      field: 'secondViscosity',
      reason: `Both liquids have ${viscosityInWords(firstViscosity)}, so every blend of them has that`,
      accepted: 'a viscosity that differs from the first one',
    }
  }
  const thin = Math.min(firstViscosity, secondViscosity)
  const thick = Math.max(firstViscosity, secondViscosity)
  if (wantedViscosity >= thin && wantedViscosity <= thick) return undefined
  return {
    field: 'wantedViscosity',
    reason: `${inputs.wantedViscosity.label} is ${viscosityInWords(wantedViscosity)}, which no blend of these two can have`,
    accepted: `${viscosityInWords(thin)} to ${viscosityInWords(thick)}`,
  }
}

/** The parts of the blend, the first being what is left. */
function partsOf(input: Values, secondShare: number): BlendPart[] {
  const three = input.wanted === 'blend-of-three'
  const thirdShare = three ? input.thirdShare : 0
  return [
    { share: Math.max(0, 1 - secondShare - thirdShare), kinematicViscosity: input.firstViscosity },
    { share: secondShare, kinematicViscosity: input.secondViscosity },
    ...(three ? [{ share: thirdShare, kinematicViscosity: input.thirdViscosity }] : []),
  ]
}

function noticesOf(parts: readonly BlendPart[], viscosity: number, byRefutas: number): Notice[] {
  const viscosities = parts.map((part) => part.kinematicViscosity)
  const apart = Math.max(...viscosities) / Math.min(...viscosities)
  const difference = Math.abs(byRefutas / viscosity - 1) * 100
  return [
    {
      grade: 'information',
      text: `The Refutas index gives ${viscosityInWords(byRefutas)}, ${difference.toFixed(1)} % away. So far do two usual rules differ.`,
    },
    ...(apart > FAR_APART
      ? [
          {
            grade: 'caution' as const,
            text: `One liquid is ${apart.toFixed(0)} times as thick as another. Make a small trial blend and measure it before the tank is filled; see too that they stay mixed.`,
          },
        ]
      : []),
  ]
}

const INDEX = ['₁', '₂', '₃'] as const

/** Viscosity of the blend, or the share of the second liquid that it needs, with a check by another rule. */
export function compute(input: Values) {
  const refusal = refusalOf(input)
  if (refusal) return { refusal }
  const find = input.wanted === 'share'
  const shareOfSecond = find
    ? shareByWalther(input.firstViscosity, input.secondViscosity, input.wantedViscosity)
    : input.secondShare
  const parts = partsOf(input, shareOfSecond)
  const viscosity = blendByWalther(parts)
  const byRefutas = blendByRefutas(parts)
  const ratio = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'ratio',
  })
  const sum = parts.map((_, index) => `x${INDEX[index]}W${INDEX[index]}`).join(' + ')
  return {
    outputs: { viscosity, shareOfSecond, byRefutas },
    steps: [
      ...parts.map((part, index) =>
        ratio(
          `W of liquid ${index + 1}`,
          `W${INDEX[index]}`,
          `log log (ν${INDEX[index]} + 0.7 + exp(−1.47 − 1.84ν${INDEX[index]} − 0.51ν${INDEX[index]}²))`,
          doubleLogarithm(part.kinematicViscosity),
        ),
      ),
      ...(find
        ? [ratio('Share of the second liquid', 'x₂', '(W − W₁) / (W₂ − W₁)', shareOfSecond)]
        : [ratio('W of the blend', 'W', sum, doubleLogarithm(viscosity))]),
      {
        label: 'Viscosity of the blend',
        symbol: 'ν',
        rule: find ? 'as wanted' : 'the ν that has this W, solved exactly',
        value: viscosity,
        kind: 'kinematicViscosity' as const,
      },
      {
        label: 'Check: by the Refutas index',
        symbol: 'ν′',
        rule: 'exp exp((ΣxI − 10.975) / 14.534) − 0.8 with I = 14.534 ln ln(ν + 0.8) + 10.975',
        value: byRefutas,
        kind: 'kinematicViscosity' as const,
      },
    ],
    notices: noticesOf(parts, viscosity, byRefutas),
  }
}
