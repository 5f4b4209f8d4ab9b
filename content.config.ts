import { defineCollection } from 'astro:content'
import { file, glob } from 'astro/loaders'
import * as diagnosis from './components/content/schema-diagnosis.ts'
import * as exercises from './components/content/schema-exercise.ts'
import * as lessons from './components/content/schema-lesson.ts'
import { bench } from './components/content/schema-bench.ts'
import { table } from './components/content/schema-table.ts'
import * as schemas from './components/content/schemas.ts'

const prose = (folder: string) => glob({ pattern: '*.mdx', base: `./content/${folder}` })
const data = (folder: string) => glob({ pattern: '*.yaml', base: `./content/${folder}` })

export const collections = {
  circuit: defineCollection({ loader: prose('circuit'), schema: schemas.circuitArticle }),
  symptoms: defineCollection({ loader: prose('symptoms'), schema: schemas.symptom }),
  procedures: defineCollection({ loader: prose('procedures'), schema: schemas.procedure }),
  cautions: defineCollection({ loader: file('content/cautions/cautions.yaml'), schema: schemas.caution }),
  glossary: defineCollection({ loader: file('content/glossary/terms.yaml'), schema: schemas.term }),
  sources: defineCollection({ loader: file('content/sources/sources.yaml'), schema: schemas.source }),
  plants: defineCollection({ loader: data('plants'), schema: schemas.plant }),
  benches: defineCollection({ loader: data('benches'), schema: bench }),
  circuits: defineCollection({ loader: data('circuits'), schema: schemas.circuit }),
  faults: defineCollection({ loader: data('faults'), schema: schemas.fault }),
  tables: defineCollection({ loader: data('tables'), schema: table }),
  fuels: defineCollection({ loader: data('fuels'), schema: schemas.fuel }),
  checks: defineCollection({ loader: file('content/checks/checks.yaml'), schema: exercises.check }),
  checkStates: defineCollection({ loader: file('content/checks/states.yaml'), schema: exercises.checkState }),
  observations: defineCollection({
    loader: file('content/diagnosis/observations.yaml'),
    schema: diagnosis.observable,
  }),
  told: defineCollection({ loader: file('content/diagnosis/told.yaml'), schema: diagnosis.told }),
  starts: defineCollection({ loader: file('content/diagnosis/starts.yaml'), schema: diagnosis.start }),
  diagnosisWeights: defineCollection({
    loader: file('content/diagnosis/weights.yaml'),
    schema: diagnosis.weights,
  }),
  exercises: defineCollection({ loader: data('exercises'), schema: exercises.exercise }),
  lessons: defineCollection({ loader: prose('lessons'), schema: lessons.lesson }),
  lessonQuestions: defineCollection({ loader: data('lessons/questions'), schema: lessons.questions }),
}
