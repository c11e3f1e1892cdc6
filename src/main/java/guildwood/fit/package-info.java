/** How well a species suits a place: tolerances, fit on each axis, and the verdict. No web, no storage. */
package guildwood.fit;
