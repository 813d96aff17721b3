import { Component, type ReactNode } from 'react'

interface Props {
  readonly instead: ReactNode
  readonly children: ReactNode
}

/** Keeps a fault in one part of the page, or a part that could not be fetched, from taking the rest with it. */
export class Guard extends Component<Props, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false }

  static getDerivedStateFromError() {
    return { hasFailed: true }
  }

  override render() {
    return this.state.hasFailed ? this.props.instead : this.props.children
  }
}
