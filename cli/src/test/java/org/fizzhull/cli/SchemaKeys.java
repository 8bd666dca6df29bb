package org.fizzhull.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The keys that a JSON Schema names, each by its place: {@code bath.temperature_C}, {@code attitudes[].up}. Properties and
 * required names count, through references and alternatives; keys behind a pattern do not.
 */
public final class SchemaKeys {
    private static final Set<String> INTERVAL = Set.of("median", "low", "high");

    /** What a schema says of one key; the description is empty where it has none. */
    public record Key(boolean orNull, boolean interval, String description) {}

    private final JsonNode root;
    private final Map<String, Key> keys = new LinkedHashMap<>();

    private SchemaKeys(JsonNode root) {
        this.root = root;
        walk(root, "");
    }

    /** All keys of a schema, by place, in its order. */
    public static Map<String, Key> of(JsonNode schema) {
        return new SchemaKeys(schema).keys;
    }

    /** The places of all keys of an answer. */
    public static Set<String> ofAnswer(JsonNode answer) {
        Set<String> places = new TreeSet<>();
        places(answer, "", places);
        return places;
    }

    private static void places(JsonNode node, String place, Set<String> places) {
        if (node.isArray()) {
            node.forEach(element -> places(element, place + "[]", places));
        }
        node.properties().forEach(field -> {
            String below = below(place, field.getKey());
            places.add(below);
            places(field.getValue(), below, places);
        });
    }

    private void walk(JsonNode node, String place) {
        List<JsonNode> forms = forms(node);
        for (JsonNode form : forms) {
            form.path("properties").properties().forEach(property -> {
                String below = below(place, property.getKey());
                keys.put(below, key(property.getValue()));
                walk(property.getValue(), below);
            });
            if (form.has("items")) {
                walk(form.get("items"), place + "[]");
            }
        }
        for (JsonNode form : forms) {
            form.path("required")
                    .forEach(name -> keys.putIfAbsent(below(place, name.asText()), new Key(false, false, "")));
        }
    }

    private Key key(JsonNode property) {
        boolean orNull = false;
        boolean interval = false;
        for (JsonNode form : forms(property)) {
            JsonNode type = form.path("type");
            orNull |= type.asText().equals("null");
            for (JsonNode allowed : type) {
                orNull |= allowed.asText().equals("null");
            }
            for (JsonNode allowed : form.path("enum")) {
                orNull |= allowed.isNull();
            }
            Set<String> names = new TreeSet<>();
            form.path("properties").fieldNames().forEachRemaining(names::add);
            interval |= names.equals(INTERVAL);
        }
        return new Key(orNull, interval, property.path("description").asText());
    }

    /** A node, what it refers to, and its alternatives. */
    private List<JsonNode> forms(JsonNode node) {
        List<JsonNode> forms = new ArrayList<>(List.of(node));
        if (node.has("$ref")) {
            forms.addAll(forms(root.at(node.get("$ref").asText().substring(1))));
        }
        for (String alternatives : List.of("oneOf", "anyOf")) {
            node.path(alternatives).forEach(form -> forms.addAll(forms(form)));
        }
        return forms;
    }

    private static String below(String place, String key) {
        return place.isEmpty() ? key : place + '.' + key;
    }
}
