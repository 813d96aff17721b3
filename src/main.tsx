/** Mounts the app; the only file that finds the DOM root. */
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app/App'

const root = document.getElementById('root')
if (root === null) throw new Error('index.html has no element with id "root"')

createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
