/** Names one obligation in an address: item, rule and duty. A key without its duty opens the rule's first. */
export function reasoningKey(itemId: string, ruleId: string, duty: string): string {
  return `${itemId}~${ruleId}~${duty}`;
}

export function isOpen(asked: string | undefined, key: string): boolean {
  return asked !== undefined && (asked === key || key.startsWith(`${asked}~`));
}
