import { kitchenName } from '../state/kitchen-name'
import { useApp, useKeeping } from './app-context'
import { fileStem, saveFile } from './save-file'

/** Saves the open kitchen as a file, whether or not it can be planned, and notes that it was. */
export function useSaveKitchen(): () => void {
  const kitchen = useApp((s) => s.kitchen)
  const keeping = useKeeping()
  return () => {
    saveFile(`${fileStem(kitchenName(kitchen))}.dryrun.json`, kitchen)
    keeping?.savedAsFile()
  }
}
