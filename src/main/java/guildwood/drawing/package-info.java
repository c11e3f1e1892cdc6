/** The guild on the ground: where each plant stands, how crowns grow, and a drawing of it to scale for any year. */
package guildwood.drawing;
