import { Component, type ComponentChild, type ComponentClass, type FunctionComponent } from 'preact'

/** Asked a hundred times for each move of a slider: it makes no lists of them. */
function sameProps<Props extends object>(before: Props, now: Props): boolean {
  for (const name in before) if (before[name] !== now[name]) return false
  for (const name in now) if (!(name in before)) return false
  return true
}

/**
 * The same component, drawn anew only when one of its props is another: a slider that is moved changes little of a
 * large drawing, and the rest of it costs no time. For components whose props are plain values, or data that is
 * never changed in place.
 */
export function steady<Props extends object>(Inner: FunctionComponent<Props>): ComponentClass<Props> {
  return class extends Component<Props> {
    override shouldComponentUpdate(next: Props): boolean {
      return !sameProps<Props>(this.props, next)
    }

    override render(props: Props): ComponentChild {
      return <Inner {...props} />
    }
  }
}
