export { finding } from '../plan/finding'
