/** Tells React that tests drive it, so it waits for `act` instead of warning about it. */
Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
