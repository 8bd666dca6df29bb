package org.fizzhull.drying;

/**
 * A piece at one moment between press and bath.
 *
 * @param time since pressing, s
 * @param mass of the whole piece, kg
 * @param water all water that can come or go: free, sorbed, made by the reaction, what hydrated salts can give back
 *     and what the acid has bound, kg
 * @param bound the part of it that the acid has bound as its hydrate, kg
 * @param waterOfDry the same per kg of dry mix
 * @param alcohol left, kg
 * @param extent CO2 lost so far, mol per kg of dry mix
 * @param fizzLeft share of the CO2 still obtainable, 0 to 1
 * @param gasCapacity CO2 still obtainable, mol per kg of the piece as it is now
 * @param roomHumidity relative humidity of the room
 * @see DryingCourse#at
 */
public record DryState(
        double time,
        double mass,
        double water,
        double bound,
        double waterOfDry,
        double alcohol,
        double extent,
        double fizzLeft,
        double gasCapacity,
        double roomHumidity) {}
