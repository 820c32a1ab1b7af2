/** Asks the browser not to clear away what is kept when it runs short of room; it may refuse, and says nothing then. */
export function askToPersist(): void {
  if ('storage' in navigator && 'persist' in navigator.storage) void navigator.storage.persist();
}
