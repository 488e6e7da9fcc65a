/** YAML and JSON as trees whose every node knows where it stands. */
package rigbrief.file.tree;
