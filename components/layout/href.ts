/**
 * Address of a page or file of this site, with the folder that the site is served from put before it.
 * @param path from the site's root: '/symptoms/' or 'circuit/the-two-valves#cracking'; a page's address gets
 *   its closing slash, a file's (a name with an ending) does not
 */
export function href(path: string): string {
  const [, route = '', tail = ''] = /^\/*([^?#]*)(.*)$/s.exec(path) ?? []
  const isFile = /\.[a-z0-9]+$/i.test(route)
  const closed = route === '' || route.endsWith('/') || isFile ? route : `${route}/`
  return `${import.meta.env.BASE_URL.replace(/\/+$/, '')}/${closed}${tail}`
}
