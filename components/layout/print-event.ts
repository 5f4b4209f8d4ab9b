/**
 * Name of the event on document just before a sheet takes over the page's address: whatever can write more into
 * the address does it then. Listeners of the window would be called in the order in which the scripts came.
 */
export const printEvent = 'clear-return:printing'
