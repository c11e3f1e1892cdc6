/** Read-only links that show one guild to helpers without an account. */
package guildwood.sharing;
