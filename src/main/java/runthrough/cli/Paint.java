package runthrough.cli;

/**
 * Colours text for a terminal, or leaves it as it is.
 *
 * @param on whether to colour
 */
record Paint(boolean on) {

    String good(String text) {
        return code("1;32", text);
    }

    String bad(String text) {
        return code("1;31", text);
    }

    String caution(String text) {
        return code("1;33", text);
    }

    String strong(String text) {
        return code("1", text);
    }

    private String code(String code, String text) {
        return on ? "\u001B[" + code + "m" + text + "\u001B[0m" : text;
    }
}
