/** What a picture needs of its cable, and what each kind of port carries. */
package rigbrief.model.link;
