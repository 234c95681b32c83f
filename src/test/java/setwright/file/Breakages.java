package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;

/** A good job's file, and edits that each break it in one place. */
final class Breakages {
    static final String GOOD = JobFile.text(Samples.bearingBlock(), null);

    private Breakages() {}

    /**
     * An edit of the good file.
     *
     * @param from replaced where it first stands
     * @param at what the problem stands at, in the edited text
     */
    record Edit(String from, String to, String at, String path, String says) {
        String text() {
            assertThat(GOOD).contains(from);
            int first = GOOD.indexOf(from);
            return GOOD.substring(0, first) + to + GOOD.substring(first + from.length());
        }
    }

    static Stream<Edit> edits() {
        return Stream.concat(Stream.concat(shapes(), numbers()), Stream.concat(names(), forms()));
    }

    private static Stream<Edit> shapes() {
        return Stream.of(
                new Edit("\"units\": \"metric\",", "", "{\n    \"title", "plan/units", "missing"),
                new Edit("\"numberOff\": 12", "\"numberOff\": \"12\"", "\"12\"", "plan/numberOff", "the text \"12\""),
                new Edit("\"numberOff\": 12", "\"numberOff\": 12.0", "12.0", "plan/numberOff", "a whole number"),
                new Edit("\"numberOff\": 12", "\"numberOff\": null", "null", "plan/numberOff", "null"),
                new Edit("\"fit\": \"H7\"", "\"fit\": null", "null", "plan/features[1]/fit", "leave the key out"),
                new Edit(
                        "[\"face1\"]",
                        "\"face1\"",
                        "\"face1\",\n            \"cutter",
                        "plan/setUps[0]/operations[0]/features",
                        "a list"),
                new Edit(
                        "[\"face1\"]",
                        "[[\"face1\"]]",
                        "[\"face1\"]]",
                        "plan/setUps[0]/operations[0]/features[0]",
                        "a text"),
                new Edit("{\"nominal\": \"38 mm\"}", "\"38 mm\"", "\"38 mm\"", "plan/features[0]/across", "nominal"),
                new Edit(
                        "\"centreCutting\": true",
                        "\"centreCutting\": 1",
                        "1, \"kept\": {\"place\": \"drawer 2\"",
                        "plan/rows[3]/centreCutting",
                        "true or false"),
                new Edit("\"metric\"", "\"metrical\"", "\"metrical\"", "plan/units", "\"metric\" is close"),
                new Edit(
                        "\"front\": \"machined\"",
                        "\"frond\": \"machined\"",
                        "\"frond\"",
                        "plan/blank/faces/frond",
                        "\"front\" is close"),
                new Edit(
                        "\"measured\": \"1-1/2 in\", \"by\": \"Ada\", ",
                        "\"measured\": \"1-1/2 in\", ",
                        "{\"measured\": \"1",
                        "plan/setUps[0]/operations[0]/stickOut/by",
                        "missing"));
    }

    private static Stream<Edit> numbers() {
        return Stream.of(
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"1 furlong\"",
                        "\"1 furlong\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "furlong"),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"1 kg\"",
                        "\"1 kg\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "kg"),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"1\"",
                        "\"1\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "without a unit"),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": 1",
                        "1,\n            \"finish\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "\"38 mm\""),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"\"",
                        "\"\",\n            \"finish\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "length"),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"-1 mm\"",
                        "\"-1 mm\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "more than zero"),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"0 mm\"",
                        "\"0 mm\",\n            \"finish\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "more than zero"),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"1 km\"",
                        "\"1 km\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "km"),
                new Edit(
                        "\"depth\": \"1 mm\"",
                        "\"depth\": \"101 m\"",
                        "\"101 m\"",
                        "plan/setUps[0]/operations[0]/depth",
                        "100 m"),
                new Edit(
                        "\"speed\": \"660 rev/min\"",
                        "\"speed\": \"0 rev/min\"",
                        "\"0 rev/min\"",
                        "plan/setUps[0]/operations[0]/speed",
                        "more than zero"),
                new Edit(
                        "\"greatest\": \"83 mm\"",
                        "\"greatest\": \"81 mm\"",
                        "\"81 mm\"",
                        "plan/blank/length/greatest",
                        "less than the text \"82 mm\" of plan/blank/length/least"),
                new Edit(
                        "\"least\": \"52 mm\"",
                        "\"least\": \"54 mm\"",
                        "\"53 mm\"",
                        "plan/blank/depth/greatest",
                        "less than"),
                new Edit(
                        "\"numberOff\": 12",
                        "\"numberOff\": 0",
                        "0,\n    \"material\"",
                        "plan/numberOff",
                        "1 to 100000"),
                new Edit("\"numberOff\": 12", "\"numberOff\": 100001", "100001", "plan/numberOff", "1 to 100000"),
                new Edit("\"numberOff\": 12", "\"numberOff\": 1e3", "1e3", "plan/numberOff", "a whole number"),
                new Edit(
                        "\"numberOff\": 12",
                        "\"numberOff\": 99999999999",
                        "99999999999",
                        "plan/numberOff",
                        "a whole number"),
                new Edit("\"columns\": 2", "\"columns\": -2", "-2", "plan/features[2]/place/columns", "1 to 1000"),
                new Edit(
                        "\"backlash\": \"0.005 in\"",
                        "\"backlash\": \"-0.005 in\"",
                        "\"-0.005 in\"",
                        "plan/rows[0]/x/backlash",
                        "zero or more"),
                new Edit(
                        "\"high\": \"20 N/um\"",
                        "\"high\": \"2 N/um\"",
                        "\"2 N/um\"",
                        "plan/rows[0]/spring/high",
                        "less than"));
    }

    private static Stream<Edit> names() {
        return Stream.of(
                new Edit(
                        "\"stickOut\"",
                        "\"stikOut\"",
                        "\"stikOut\"",
                        "plan/setUps[0]/operations[0]/stikOut",
                        "write \"stickOut\""),
                new Edit(
                        "\"datum\"",
                        "\"colour\": \"red\", \"datum\"",
                        "\"colour\"",
                        "plan/setUps[0]/colour",
                        "the keys are id, title, up,"),
                new Edit("\"holding\"", "\"holdng\"", "\"holdng\"", "plan/setUps[0]/holdng", "write \"holding\""),
                new Edit(
                        "\"id\": \"o2\"",
                        "\"id\": \"hole2\"",
                        "\"hole2\", \"kind\": \"spot\"",
                        "plan/setUps[0]/operations[1]/id",
                        "taken by plan/features[2]/id at line 45, column 15"),
                new Edit(
                        "\"id\": \"o2\"",
                        "\"id\": \"o 2\"",
                        "\"o 2\"",
                        "plan/setUps[0]/operations[1]/id",
                        "letters, digits"),
                new Edit(
                        "\"cutter\": \"end-mill-16\"",
                        "\"cutter\": \"end-mil-16\"",
                        "\"end-mil-16\"",
                        "plan/setUps[0]/operations[0]/cutter",
                        "no cutter \"end-mil-16\" in the job or the shop; \"end-mill-16\" is close"),
                new Edit(
                        "\"cutter\": \"end-mill-16\"",
                        "\"cutter\": \"vise-6in\"",
                        "\"vise-6in\",\n            \"holder",
                        "plan/setUps[0]/operations[0]/cutter",
                        "is no cutter"),
                new Edit(
                        "\"holder\": \"collet-r8-16\"",
                        "\"holder\": \"x\"",
                        "\"x\"",
                        "plan/setUps[0]/operations[0]/holder",
                        "there are collet-r8-16, drill-chuck-13"),
                new Edit(
                        "\"vise\": \"vise-6in\"",
                        "\"vise\": \"vise-8in\"",
                        "\"vise-8in\"",
                        "plan/setUps[0]/holding/vise",
                        "is close"),
                new Edit(
                        "\"parallels\": \"parallels-10\"",
                        "\"parallels\": \"nothing\"",
                        "\"nothing\"",
                        "plan/setUps[0]/holding/parallels",
                        "no set of parallels"),
                new Edit(
                        "\"machine\": \"knee-mill\"",
                        "\"machine\": \"knee-mil\"",
                        "\"knee-mil\"",
                        "plan/machine/machine",
                        "\"knee-mill\" is close"),
                new Edit(
                        "\"clockedIn\": [\"vise-6in\"]",
                        "\"clockedIn\": [\"lathe\"]",
                        "\"lathe\"",
                        "plan/machine/clockedIn[0]",
                        "no device"),
                new Edit(
                        "\"material\": \"mild-steel\"",
                        "\"material\": \"mud\"",
                        "\"mud\"",
                        "plan/material",
                        "no material"),
                new Edit(
                        "[\"face1\"]",
                        "[\"face9\"]",
                        "\"face9\"",
                        "plan/setUps[0]/operations[0]/features[0]",
                        "\"face1\" is close"),
                new Edit(
                        "\"kind\": \"grid\"",
                        "\"kind\": \"gird\"",
                        "\"gird\"",
                        "plan/features[2]/place/kind",
                        "write \"grid\""),
                new Edit(
                        "\"kind\": \"grid\",",
                        "",
                        "{\n          \n          \"from\"",
                        "plan/features[2]/place/kind",
                        "points, grid"),
                new Edit(
                        "\"kind\": \"hole\",\n        \"id\": \"hole2\"",
                        "\"kind\": \"gear\",\n        \"id\": \"hole2\"",
                        "\"gear\"",
                        "plan/features[2]/kind",
                        "the kinds are face, step, slot"));
    }

    private static Stream<Edit> forms() {
        return Stream.of(
                new Edit("\"thread\": \"M8\",", "", "\"tapped\"", "plan/features[2]/make", "without a thread"),
                new Edit("\"fit\": \"H7\"", "\"thread\": \"M12\"", "\"reamed\"", "plan/features[1]/make", "not tapped"),
                new Edit(
                        "[\"face1\"]",
                        "[]",
                        "[],\n            \"cutter\"",
                        "plan/setUps[0]/operations[0]/features",
                        "at least one"),
                new Edit(
                        "\"at\": \"2025-03-14\"}",
                        "\"at\": \"yesterday\"}",
                        "\"yesterday\"",
                        "plan/setUps[0]/operations[0]/stickOut/at",
                        "a date such as"),
                new Edit(
                        "\"source\": \"common practice: sample\"",
                        "\"source\": \" \"",
                        "\" \"",
                        "plan/rows[0]/source",
                        "at least one word"),
                new Edit(
                        "\"feedLeast\": \"0.5 in/min\", ",
                        "",
                        "{\"travel\": \"34 in\"",
                        "plan/rows[0]/x",
                        "stand together"),
                new Edit(
                        "\"steps\": [\"660 rev/min\", \"1115 rev/min\"]",
                        "\"steps\": []",
                        "{\"kind\": \"machine\"",
                        "plan/rows[0]",
                        "neither steps nor a range"),
                new Edit(
                        "{\"diameter\": \"12 mm\"",
                        "{\"diameter\": \"1 mm\"",
                        "\"1 mm\", \"feed\"",
                        "plan/rows[13]/feeds[1]/diameter",
                        "more than the diameter before it"),
                new Edit(
                        "\"steps\": [\"660 rev/min\", \"1115 rev/min\"]",
                        "\"steps\": [\"660 rev/min\", \"600 rev/min\"]",
                        "\"600 rev/min\"",
                        "plan/rows[0]/steps[1]",
                        "less than"),
                new Edit(
                        "\"units\": \"metric\",",
                        "\"units\": \"metric\", \"units\": \"inch\",",
                        "\"units\": \"inch\"",
                        "plan/units",
                        "twice in this object, first at line 6, column 5"),
                new Edit(
                        "\"version\": 1",
                        "\"version\": 7",
                        "7,\n",
                        "version",
                        "version 7 and was written by a newer Setwright; this one reads versions 0 to 1"),
                new Edit("\"version\": 1", "\"version\": \"1\"", "\"1\"", "version", "versions 0 to 1"),
                new Edit("\"version\": 1,", "", "{\n  \"format\"", "version", "missing"),
                new Edit(
                        "\"setwright job\"", "\"setwright shop\"", "\"setwright shop\"", "format", "it is a shop file"),
                new Edit(
                        "\"format\": \"setwright job\",", "", "{\n  \n  \"version\"", "format", "it has no \"format\""),
                new Edit(
                        "\"setUps\": [",
                        "\"setUps\": [ ,",
                        ",\n      {\n        \"id\": \"s1\"",
                        "plan/setUps[0]",
                        "a text in double quotes, a number"),
                new Edit("\"numberOff\": 12", "\"numberOff\": 012", "12,", "plan/numberOff", "without leading zeros"),
                new Edit(
                        "\"numberOff\": 12,",
                        "\"numberOff\": 12",
                        "\"material\": \"mild",
                        "plan/numberOff",
                        "a comma before the next key"),
                new Edit(
                        "\"reason\": \"the belt",
                        "\"reason\": \"the\u0000 belt",
                        "\u0000",
                        "plan/setUps[0]/operations[0]/reason",
                        "code 0"),
                new Edit("  \"version\"", "\u0000 \"version\"", "\u0000", "format", "code 0"));
    }
}
