import { Component, type ReactNode } from 'react'

interface Props {
  readonly instead: ReactNode
  readonly children: ReactNode
}

/** Keeps a fault in the picture from taking the words with it. */
export class PictureGuard extends Component<Props, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false }

  static getDerivedStateFromError() {
    return { hasFailed: true }
  }

  override render() {
    return this.state.hasFailed ? this.props.instead : this.props.children
  }
}
