package fairgrain.finding;

import fairgrain.quantity.Quantity;

/** A number to act on, already rounded to the safe side on the shop's own grid. */
public record Size(String what, Quantity value) {}
