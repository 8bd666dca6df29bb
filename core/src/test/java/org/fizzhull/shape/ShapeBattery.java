package org.fizzhull.shape;

import java.util.stream.Stream;

/** The shapes every battery test runs over, as canonical text: a new kind is one line here. */
final class ShapeBattery {
    private ShapeBattery() {}

    static Stream<String> texts() {
        return Stream.of(
                "sphere(diameter=65 mm)",
                "sphere(diameter=65 mm, seam=3 mm)",
                "dome(diameter=80 mm)",
                "dome(diameter=100 mm, height=35 mm)",
                "bowl(diameter=90 mm, wall=15 mm)",
                "bowl(diameter=60 mm, wall=28 mm)",
                "geode(diameter=80 mm, wall=14 mm, crystals=20 g)",
                "puck(diameter=70 mm, height=30 mm)",
                "puck(diameter=70 mm, height=30 mm, edge=5 mm)",
                "puck(diameter=40 mm, height=60 mm, edge=18 mm)",
                "puck(diameter=30 mm, height=30 mm, edge=15 mm)",
                "egg(length=70 mm, diameter=50 mm)",
                "egg(length=400 mm, diameter=20 mm)",
                "egg(length=50 mm, diameter=50 mm)",
                "ring(diameter=90 mm, tube=30 mm)",
                "ring(diameter=60 mm, tube=30 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm, edge=8 mm)",
                "block(length=50 mm, width=30 mm, height=90 mm, edge=12 mm)",
                "cone(diameter=60 mm, height=70 mm)",
                "cone(diameter=75 mm, height=35 mm, top=55 mm)",
                "cone(diameter=50 mm, height=60 mm, top=10 mm)",
                "cone(diameter=30 mm, height=90 mm, top=30 mm)",
                "capsule(length=80 mm, diameter=35 mm)",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                "star(points=3, diameter=80 mm, inner=10 mm, height=60 mm)",
                "star(points=6, diameter=80 mm, inner=78 mm, height=90 mm)",
                "heart(width=70 mm, height=28 mm)",
                "heart(width=60 mm, height=90 mm)",
                "filled(water=143 g, like=sphere)",
                "filled(water=90 g, like=dome)",
                "filled(water=90 g, like=puck)",
                "filled(water=90 g, like=heart)",
                "filled(water=62.5 g, like=shell)",
                "filled(water=120 g, like=figure)");
    }
}
