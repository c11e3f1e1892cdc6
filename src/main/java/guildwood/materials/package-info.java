/** What beds and paths are covered with: how much, how much is there, and what it is enough for. Volumes in cubic metres. */
package guildwood.materials;
