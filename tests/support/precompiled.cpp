// Exists so that the precompiled header of the tests has a source to belong to.
