import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { serveSite, type OpenPage, type Site } from './site.ts'

const VISCOSITY = 'calculators/viscosity-at-temperature/'
const FILTER = 'calculators/filter-pressure-drop/'
const ARTICLE = 'circuit/viscosity-and-temperature/'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const awake = (page: Page) =>
  page.locator('calculator-form .calculator-actions[data-ready="true"]').first().waitFor()

/** Opens a page, waits until its first calculator is alive, and checks at the end that nothing went wrong. */
async function withCalculator(path: string, use: (open: OpenPage) => Promise<void>): Promise<void> {
  const open = await site.open(path)
  await open.page.locator('calculator-form').first().scrollIntoViewIfNeeded()
  await awake(open.page)
  await use(open)
  expect(open.faults).toEqual([])
  await open.context.close()
}

const field = (page: Page, name: string) => page.locator(`input[name="${name}"]`)
const unit = (page: Page, name: string) => page.locator(`select[name="${name}.unit"]`)
const plain = (text: string) => text.replaceAll('\u00a0', ' ')
const found = async (page: Page) => plain(await page.locator('.calculator-found').first().innerText())
const value = async (page: Page) => plain(await page.locator('.value').first().innerText())
const message = async (page: Page, name: string) =>
  plain(await page.locator(`.field:has(input[name="${name}"]) .field-message`).innerText())
/** Every input that plays a part, so that later values at the start change nothing. */
const WHOLE_ADDRESS =
  /\?v=1&\w+=two-points&firstTemperature=40\+degC&firstViscosity=404\+[^&]+&secondTemperature=100\+degC&secondViscosity=28[.0]*\+[^&]+&wantedTemperature=61\+degC&cloudPoint=0\+degC$/

/** The page waits for a pause before it writes its address. */
const query = (page: Page) => () => new URL(page.url()).search

describe('what is typed', () => {
  it('changes the result at once, and the working with it', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      expect(await value(page)).toMatch(/^132\.1 ± 1\.3 mm²\/s$/)
      await field(page, 'wantedTemperature').fill('100')
      expect(await value(page)).toMatch(/^28\.0/)
      await page.locator('.working', { hasText: '28.0000' }).waitFor()
    }))

  it('stays the same quantity when another unit is picked, and shows the typed text again on the way back', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      const before = await value(page)
      await unit(page, 'firstTemperature').selectOption('degF')
      expect(await field(page, 'firstTemperature').inputValue()).toBe('104')
      expect(await value(page)).toBe(before)
      await unit(page, 'firstTemperature').selectOption('degC')
      expect(await field(page, 'firstTemperature').inputValue()).toBe('40')
      await unit(page, 'kinematicViscosity').selectOption('m2/s')
      expect(await value(page)).toMatch(/m²\/s$/)
    }))

  it('may be a number with another unit or an expression; the unit parser is fetched only for the expression', () =>
    withCalculator(FILTER, async ({ page }) => {
      const scripts: string[] = []
      page.on('request', (request) => scripts.push(request.url()))
      await field(page, 'drop').fill('12 psi')
      expect(await message(page, 'drop')).toBe('Understood: 12 psi = 82.74 kPa')
      expect(scripts).toEqual([])
      await field(page, 'drop').fill('0.5 bar + 30 kPa')
      await page.getByText('Understood: 0.5 bar + 30 kPa = 80 kPa').waitFor()
      expect(scripts.filter((address) => /expression/.test(address))).toHaveLength(1)
      expect(await value(page)).toMatch(/kPa$/)
    }))

  it('takes a decimal comma', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await field(page, 'secondViscosity').fill('28,0')
      expect(await value(page)).toMatch(/^132\.1/)
    }))

  it('follows the unit system of the site', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await page.evaluate(() => {
        document.documentElement.dataset['units'] = 'us'
        document.dispatchEvent(new CustomEvent('clear-return:preferences'))
      })
      expect(await field(page, 'firstTemperature').inputValue()).toBe('104')
      expect(await value(page)).toMatch(/^132\.1/)
    }))

  it.each([VISCOSITY, ARTICLE])("is in the person's own units after a page load: %s", (path) =>
    withCalculator(path, async ({ page }) => {
      await page.evaluate(() => localStorage.setItem('clear-return:units', 'us'))
      await page.reload()
      await page.locator('calculator-form').first().scrollIntoViewIfNeeded()
      await awake(page)
      expect(await unit(page, 'firstTemperature').first().inputValue()).toBe('degF')
      await page.goto(site.address(FILTER))
      await awake(page)
      expect(await unit(page, 'drop').inputValue()).toBe('psi')
    }),
  )

  it('is kept when it was typed before the script had come', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await page.route(/mount\..*\.js/, async (route) => {
        await page.waitForTimeout(800)
        await route.continue()
      })
      await page.reload()
      await field(page, 'firstViscosity').press('End')
      await page.keyboard.type('0')
      await awake(page)
      expect(await field(page, 'firstViscosity').inputValue()).toBe('4040')
      expect(await value(page)).not.toMatch(/^132/)
    }))

  it('comes with accuracies that can be changed', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await page.getByText('Accuracy of the inputs').click()
      await field(page, 'firstViscosity.accuracy').fill('10')
      expect(await value(page)).not.toMatch(/± 1\.3 /)
      await field(page, 'firstViscosity.accuracy').fill('-1')
      expect(await found(page)).toMatch(/No result:.*Accuracy of: Viscosity at the first temperature/s)
    }))

  it('keeps its text while a choice hides its field', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await field(page, 'secondViscosity').fill('27')
      await page.getByLabel('One measured viscosity and the slope B').check()
      expect(await field(page, 'secondViscosity').count()).toBe(0)
      await page.getByLabel('Two measured viscosities').check()
      expect(await field(page, 'secondViscosity').inputValue()).toBe('27')
    }))
})

describe('what cannot be computed', () => {
  it.each([
    ['an empty field', { firstTemperature: '' }, 'firstTemperature', /nothing was typed/],
    ['text', { firstTemperature: 'warm' }, 'firstTemperature', /«warm»/],
    ['the wrong dimension', { firstTemperature: '40 kPa' }, 'firstTemperature', /«40 kPa»/],
    [
      'below absolute zero',
      { firstTemperature: '-300' },
      'firstTemperature',
      /«-300» is below absolute zero/,
    ],
    ['viscosities that fall the wrong way', { secondViscosity: '500' }, 'secondViscosity', /wrong way/],
    ['identical temperatures', { secondTemperature: '40' }, 'secondTemperature', /same as the first/],
    ['1e308', { firstViscosity: '1e308' }, 'firstViscosity', /1(\.0+)?(e308|×10)/],
    ['two decimal marks', { firstViscosity: '1.234,5' }, 'firstViscosity', /«1\.234,5»/],
    ['a number that reads two ways', { firstViscosity: '1,234' }, 'firstViscosity', /1234 or 1\.234/],
    ['a command', { firstViscosity: 'import("x")' }, 'firstViscosity', /«import\("x"\)»/],
  ] as const)('%s: a sentence, the typed text stays, no result is shown', (_, typed, at, reason) =>
    withCalculator(VISCOSITY, async ({ page }) => {
      for (const [name, text] of Object.entries(typed)) await field(page, name).fill(text)
      const text = Object.entries(typed)[0]?.[1] ?? ''
      await page.locator('.no-result strong').waitFor()
      expect(await field(page, at).inputValue()).toBe(text)
      expect(await field(page, at).getAttribute('aria-invalid')).toBe('true')
      const sentence = await message(page, at)
      expect(sentence).toMatch(reason)
      expect(sentence).toMatch(/Accepted: .+\.$/)
      expect(await found(page)).toContain('No result:')
      expect(await found(page)).not.toMatch(/132/)
      expect(await page.locator('.working').count()).toBe(0)
    }),
  )
})

describe('the address', () => {
  it('reproduces the calculation in a fresh browser', async () => {
    let address = ''
    let result = ''
    await withCalculator(VISCOSITY, async ({ page }) => {
      await field(page, 'firstTemperature').fill('100 degF')
      await field(page, 'firstViscosity').fill('3.1')
      await field(page, 'secondViscosity').fill('1.25')
      await unit(page, 'wantedTemperature').selectOption('degF')
      await field(page, 'wantedTemperature').fill('59')
      await unit(page, 'kinematicViscosity').selectOption('m2/s')
      result = await value(page)
      await expect.poll(query(page)).toContain('wantedTemperature=59+degF')
      await expect.poll(query(page)).toContain('kinematicViscosity.unit=')
      address = query(page)()
    })
    await withCalculator(VISCOSITY + address, async ({ page }) => {
      expect(await value(page)).toBe(result)
      expect(await field(page, 'wantedTemperature').inputValue()).toBe('59')
      // Time in which a page that writes another address would do it.
      await page.waitForTimeout(700)
      expect(query(page)()).toBe(address)
    })
  })

  it('holds nothing while nothing differs from the start', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await field(page, 'wantedTemperature').fill('61')
      await expect.poll(query(page)).toMatch(WHOLE_ADDRESS)
      await field(page, 'wantedTemperature').fill('60')
      await expect.poll(query(page)).toBe('')
    }))

  it('that is hostile or broken is named as text, never run, and the rest is used', () => {
    const script = '<img src=x onerror="document.title=1"><script>document.title=2</script>'
    const parts = [
      `${encodeURIComponent(script)}=1`,
      `form=${encodeURIComponent(script)}`,
      `firstViscosity=${encodeURIComponent(script)}`,
      `kinematicViscosity.unit=${encodeURIComponent('"><svg onload=1>')}`,
      '__proto__=1',
      'secondViscosity=%E0%A4%A',
      'wantedTemperature=70+degC',
    ]
    return withCalculator(`${VISCOSITY}?${parts.join('&')}`, async ({ page }) => {
      const problems = page.locator('.address-problems')
      expect(await problems.innerText()).toContain('«<img src=x onerror=')
      expect(await problems.innerText()).toMatch(/«What is known»: read «<img.*accepted: two-points/)
      expect(await page.locator('calculator-form img, calculator-form script').count()).toBe(0)
      expect(await page.title()).toMatch(/^Viscosity/)
      expect(await field(page, 'wantedTemperature').inputValue()).toBe('70')
      expect(await field(page, 'firstViscosity').inputValue()).toBe(script)
      expect(await found(page)).toContain('No result:')
    })
  })

  it('stands in full on the printed sheet, though nothing was changed', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
      const printed = await page.locator('[data-print-address]').textContent()
      expect(printed).toMatch(/\?v=1&[^]*wantedTemperature=60\+degC/)
      await page.evaluate(() => dispatchEvent(new Event('afterprint')))
    }))

  it('says that nothing was used when it is too long to be read', () =>
    withCalculator(`${VISCOSITY}?wantedTemperature=70+degC&x=${'y'.repeat(9000)}`, async ({ page }) => {
      const problems = await page.locator('.address-problems').innerText()
      expect(problems).toMatch(/^Nothing in the address/)
      expect(problems).not.toContain('The rest was')
      expect(await field(page, 'wantedTemperature').inputValue()).toBe('60')
    }))

  it('keeps the calculators of one page apart', () =>
    withCalculator(ARTICLE, async ({ page }) => {
      const second = page.locator('calculator-form').nth(1)
      await second.scrollIntoViewIfNeeded()
      await second.locator('.calculator-actions[data-ready="true"]').waitFor()
      const id = await second.getAttribute('data-name')
      const text = second.locator('input[type="text"]').first()
      const before = await text.inputValue()
      await text.fill(`${before}1`)
      await expect.poll(query(page)).toMatch(new RegExp(`^\\?${id}\\.v=1&${id}\\.`))
      expect(await page.locator('.address-problems li').count()).toBe(0)
    }))
})

describe('what leaves the page', () => {
  it('is copied, and says so', async () => {
    const { page, context, faults } = await site.open(VISCOSITY)
    await context.grantPermissions(['clipboard-read', 'clipboard-write'])
    await awake(page)
    await field(page, 'wantedTemperature').fill('61')
    await page.getByRole('button', { name: 'Copy link' }).click()
    await page.getByText('Link copied.').waitFor()
    const clipboard = () => page.evaluate(() => navigator.clipboard.readText())
    expect(await clipboard()).toMatch(WHOLE_ADDRESS)
    await page.getByRole('button', { name: 'Copy as text' }).click()
    await page.getByText('Text copied.').waitFor()
    expect(plain(await clipboard())).toMatch(
      /Wanted temperature T: 61 °C[^]*Working[^]*ASTM D341[^]*wantedTemperature=61/,
    )
    expect(faults).toEqual([])
    await context.close()
  })

  it('stands in a box to copy from when the browser refuses the clipboard', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await page.evaluate(() => {
        navigator.clipboard.writeText = () => Promise.reject(new Error('refused'))
      })
      await page.getByRole('button', { name: 'Copy link' }).click()
      expect(await page.getByLabel('Copy from here').inputValue()).toMatch(
        /\/\?v=1&[^]*firstViscosity=404\+[^]*wantedTemperature=60\+degC&cloudPoint=0\+degC$/,
      )
    }))

  it.each(['CSV', 'JSON'])('is handed over as %s', (form) =>
    withCalculator(VISCOSITY, async ({ page }) => {
      const coming = page.waitForEvent('download')
      await page.getByRole('button', { name: `Download ${form}` }).click()
      const download = await coming
      expect(download.suggestedFilename()).toBe(`viscosity-at-temperature.${form.toLowerCase()}`)
      expect(readFileSync(await download.path(), 'utf8')).toMatch(/132\.12/)
    }),
  )

  it('is printed with the inputs as values, without the buttons', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await page.emulateMedia({ media: 'print' })
      expect(plain(await page.locator('.printed-inputs').innerText())).toMatch(
        /First temperature T₁\s+40 °C ± 0.1 K/,
      )
      expect(await page.locator('.working ol').isVisible()).toBe(true)
      expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false)
      expect(await field(page, 'firstTemperature').isVisible()).toBe(false)
    }))

  it('goes back to the start on Reset, and returns on Undo reset', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      await field(page, 'wantedTemperature').fill('61')
      await page.getByRole('button', { name: 'Reset', exact: true }).click()
      expect(await field(page, 'wantedTemperature').inputValue()).toBe('60')
      await page.getByRole('button', { name: 'Undo reset' }).click()
      expect(await field(page, 'wantedTemperature').inputValue()).toBe('61')
    }))
})

describe('the page as it was built', () => {
  it('is a worked example for a reader without JavaScript', async () => {
    const { page, context } = await site.open(VISCOSITY, { javaScriptEnabled: false })
    expect(await value(page)).toMatch(/^132\.1 ± 1\.3 mm²\/s$/)
    expect(await page.locator('noscript .calculator-still').isVisible()).toBe(true)
    expect(await page.locator('.working li').count()).toBeGreaterThan(3)
    expect(await page.getByRole('img', { name: /Viscosity .* against Wanted temperature/ }).isVisible()).toBe(
      true,
    )
    expect(await page.locator('.worked-example').innerText()).toContain('As published')
    expect(await page.getByRole('button', { name: 'Copy link' }).isVisible()).toBe(false)
    await context.close()
  })

  it('says so when its script does not come', async () => {
    const { page, context } = await site.open()
    await page.route(/mount\..*\.js/, (route) => route.abort())
    await page.goto(site.address(VISCOSITY))
    await page.getByText('could not be loaded').waitFor()
    expect(await value(page)).toMatch(/^132\.1/)
    await context.close()
  })

  it('does not move when the script takes over', () =>
    withCalculator(VISCOSITY, async ({ page }) => {
      const after = await page.locator('calculator-form').boundingBox()
      let letGo = () => {}
      const held = new Promise<void>((resolve) => (letGo = resolve))
      await page.route(/mount\..*\.js/, async (route) => {
        await held
        await route.continue()
      })
      await page.reload()
      const before = await page.locator('calculator-form').boundingBox()
      letGo()
      await awake(page)
      expect(before?.height).toBe(after?.height)
    }))
})
