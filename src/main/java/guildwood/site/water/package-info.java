/** How much rain runs off the ground, and what a shallow basin across the slope holds of it. Millimetres and metres. */
package guildwood.site.water;
