//! What the suites share: closeness with a named source, and readers of the data files.
