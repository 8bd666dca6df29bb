package org.fizzhull.drying.place;

import org.fizzhull.quantity.Given;
import org.fizzhull.shape.Shape;

/**
 * The ways out for vapour of one shape on one standing: as it lies there, and from all around once it is taken off.
 *
 * <p>Kept by whoever asks for many plans of one shape ({@code forecast.making.DryingConditions#plan}). Immutable.
 *
 * @param standing what the piece lies on
 * @param lying as it lies there
 * @param around taken off, wrapped or put away
 */
public record Openings(Standing standing, Opening lying, Opening around) {
    /**
     * Refuses what is missing.
     *
     * @param standing what the piece lies on
     * @param lying as it lies there
     * @param around taken off, wrapped or put away
     */
    public Openings {
        Given.all("standing, lying, around", standing, lying, around);
    }

    /**
     * {@return the openings of a shape} May take some tenths of a second for a shape with edges: keep the result for as
     * long as shape and standing stay.
     *
     * @param shape form of the piece
     * @param standing what the piece lies on
     */
    public static Openings of(Shape shape, Standing standing) {
        Opening lying = standing.opening(shape);
        return new Openings(standing, lying, standing == Standing.RACK ? lying : Standing.RACK.opening(shape));
    }
}
