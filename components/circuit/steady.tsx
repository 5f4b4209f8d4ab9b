import { Component, type ComponentChild, type ComponentClass, type FunctionComponent } from 'preact'

function sameProps(before: object, now: object): boolean {
  const [old, fresh] = [Object.entries(before), new Map<string, unknown>(Object.entries(now))]
  return old.length === fresh.size && old.every(([name, value]) => fresh.get(name) === value)
}

/**
 * The same component, drawn anew only when one of its props is another: a slider that is moved changes little of a
 * large drawing, and the rest of it costs no time. For components whose props are plain values, or data that is
 * never changed in place.
 */
export function steady<Props extends object>(Inner: FunctionComponent<Props>): ComponentClass<Props> {
  return class extends Component<Props> {
    override shouldComponentUpdate(next: Props): boolean {
      return !sameProps(this.props, next)
    }

    override render(props: Props): ComponentChild {
      return <Inner {...props} />
    }
  }
}
