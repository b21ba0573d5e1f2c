/** Going through the doors in a browser. `home` is the address by name: a passkey is bound to a name and not to a number. */
import type { Page } from 'playwright-core';
import { PASSWORD } from '../support/doors.ts';
import { letterTo } from '../support/people.ts';

export async function signUp(page: Page, home: string, email: string) {
  await page.goto(`${home}/sign-up`);
  await page.getByLabel('Your name').fill('Ines Falk');
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password', { exact: true }).fill(PASSWORD);
  await page.getByRole('button', { name: 'Sign up' }).click();
  await page.getByRole('heading', { name: 'A letter is on its way' }).waitFor();
  await page.goto(`${home}${letterTo(email).path}`);
  await page.getByRole('button', { name: 'Yes, it is mine' }).click();
  await page.getByRole('heading', { name: 'You belong to no organisation yet' }).waitFor();
}

export async function signIn(page: Page, email: string, password = PASSWORD) {
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password', { exact: true }).fill(password);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
}

export async function found(page: Page, name: string) {
  await page.getByLabel('Its name').fill(name);
  await page.getByLabel('Time zone').fill('Europe/Oslo');
  await page.getByRole('button', { name: 'Found it' }).click();
  await page.locator('.organisation').getByText(name).waitFor();
}

export async function signOut(page: Page, home: string) {
  await page.goto(`${home}/account`);
  await page.getByRole('button', { name: 'Sign out here' }).click();
  await page.getByRole('heading', { name: 'Who is there?' }).waitFor();
}
