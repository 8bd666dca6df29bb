import org.jspecify.annotations.NullMarked;

/**
 * Whether a pressed piece floats, how it fizzes and when it is dry.
 *
 * <p>Start at {@link org.fizzhull.forecast.FloatPredictor}. Exported are the types that an embedder calls or
 * receives; packages that only serve others inside the library (physical relations, draws, repair of meshes, the
 * bodies of answers) are not. {@code OfferedTypesTest} counts the exported types and checks that no member of theirs
 * leads to a hidden one. The library opens no file, starts no thread and reads no clock. Commons Math and EJML are
 * automatic modules: their jars declare none.
 */
@NullMarked
module org.fizzhull.core {
    requires java.xml;
    requires static org.jspecify;
    requires commons.math3;
    requires ejml.core;
    requires ejml.ddense;

    exports org.fizzhull.answer;
    exports org.fizzhull.answer.tree;
    exports org.fizzhull.chain;
    exports org.fizzhull.decide;
    exports org.fizzhull.decide.advise;
    exports org.fizzhull.decide.compare;
    exports org.fizzhull.decide.why;
    exports org.fizzhull.drying;
    exports org.fizzhull.drying.place;
    exports org.fizzhull.evidence;
    exports org.fizzhull.fizz.gas;
    exports org.fizzhull.forecast;
    exports org.fizzhull.forecast.making;
    exports org.fizzhull.forecast.measured;
    exports org.fizzhull.forecast.prior;
    exports org.fizzhull.forecast.question;
    exports org.fizzhull.forecast.result;
    exports org.fizzhull.geometry;
    exports org.fizzhull.learn;
    exports org.fizzhull.medium;
    exports org.fizzhull.mesh;
    exports org.fizzhull.mesh.reading;
    exports org.fizzhull.piece;
    exports org.fizzhull.pressing;
    exports org.fizzhull.quantity;
    exports org.fizzhull.recipe;
    exports org.fizzhull.shape;
    exports org.fizzhull.shape.factory;
    exports org.fizzhull.shape.load;
    exports org.fizzhull.shape.meshed;
    exports org.fizzhull.shape.text;
    exports org.fizzhull.uncertainty;
    exports org.fizzhull.voyage.result;
}
