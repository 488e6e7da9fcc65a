/** Commands, options, exit statuses, and the only code that touches the console. */
package rigbrief.cli;
