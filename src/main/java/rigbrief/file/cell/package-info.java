/** Reading one row of named cells, whatever the file around it looks like. */
package rigbrief.file.cell;
