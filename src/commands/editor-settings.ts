/** Where the starter's settings for editors go in an archive. */
export const editorSettings: Readonly<Record<string, string>> = {
  "vscode/settings.json": ".vscode/settings.json",
  "vscode/extensions.json": ".vscode/extensions.json",
  "vscode/tilebook.code-snippets": ".vscode/tilebook.code-snippets",
};
