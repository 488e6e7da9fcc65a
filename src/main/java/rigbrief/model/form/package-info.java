/** Board sizes and holes, and the slots a thick card takes. */
package rigbrief.model.form;
